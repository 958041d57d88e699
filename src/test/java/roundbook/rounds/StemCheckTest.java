package roundbook.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import roundbook.balance.Effort;
import roundbook.crosscut.Crosscutter;
import roundbook.crosscut.StemJobs;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.job.Stems;
import roundbook.job.Stems.CrossCut;
import roundbook.units.Length;

/** The check of pieces of stems sees what is wrong with them. */
class StemCheckTest {
  private static final Job CUT =
      Crosscutter.cut(StemJobs.stems(8, 4), Effort.usual(1).withMoves(20_000)).job();

  private static List<String> faults(Job job) {
    Checks checks = new Checks();
    new StemCheck(job, checks).pieces();
    return checks.verdict().faults();
  }

  /** Moves a piece along its stem by so many inches, its diameters staying as they are. */
  private static Job moved(String tag, int inches) {
    Map<String, CrossCut> cuts = new LinkedHashMap<>(CUT.stems().cuts());
    CrossCut cut = cuts.get(tag);
    cuts.put(tag, CrossCut.planned(cut.stem(), cut.from().plus(Length.ofInches(inches))));
    return CUT.withStems(new Stems(CUT.stems().all(), cuts, CUT.stems().byRule()));
  }

  @Test
  void piecesAsTheyWereCutAreSound() {
    assertEquals(List.of(), faults(CUT));
  }

  @Test
  void aPieceThatIsMovedIsNotAsItsStemIsThere() {
    Log first = CUT.logs().get(0);
    assertTrue(faults(moved(first.tag(), 20)).toString().contains("is not as its stem there"));
    assertTrue(faults(moved(first.tag(), 600)).toString().contains("reaches past its stem"));
  }

  @Test
  void aCrookInAPieceIsSeen() {
    Log first = CUT.stems().pieces(CUT.stems().all().get(0), CUT.logs()).get(0);
    int into = (int) (110 - CUT.stems().from(first).inches());
    assertTrue(faults(moved(first.tag(), into)).toString().contains("bad stretch"));
  }

  @Test
  void twoPiecesInOnePlaceAreSeen() {
    List<Log> two =
        CUT.stems().all().stream()
            .map(stem -> CUT.stems().pieces(stem, CUT.logs()))
            .filter(pieces -> pieces.size() > 1)
            .findFirst()
            .orElseThrow();
    int back =
        (int) (CUT.stems().from(two.get(0)).inches() - CUT.stems().from(two.get(1)).inches());
    String faults = faults(moved(two.get(1).tag(), back + 12)).toString();
    assertTrue(faults.contains("leave no room for the saw"), faults);
  }

  @Test
  void aPieceThinnerThanIsAskedIsSeen() {
    Job thick = CUT.with(CUT.rules().with(Setting.TIP_LEAST, Length.ofInches(20), Origin.OPTION));
    List<String> faults = new ArrayList<>(faults(thick));
    assertTrue(faults.stream().allMatch(fault -> fault.contains("too thin")));
    assertTrue(faults.size() > 0);
  }
}
