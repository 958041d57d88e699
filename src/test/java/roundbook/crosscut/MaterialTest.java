package roundbook.crosscut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.bucking.Bole;
import roundbook.bucking.BuckingTask.Cut;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Held;
import roundbook.job.AsBuilt.Place;
import roundbook.job.BuildRules.Origin;
import roundbook.job.DiameterProfile;
import roundbook.job.Job;
import roundbook.job.Kept;
import roundbook.job.Log;
import roundbook.job.Pin;
import roundbook.job.Setting;
import roundbook.job.Stem;
import roundbook.job.Stem.Stretch;
import roundbook.job.Stems;
import roundbook.job.Stems.CrossCut;
import roundbook.plan.Jobs;
import roundbook.problem.CellRef;
import roundbook.stack.FilledPlace;
import roundbook.units.Length;

/**
 * What pieces may come from, and where they are cut. Walls of 10 by 8 ft: a log of the shorter is
 * 96 + 2 x 3 overhang + 2 x 2 to square off, 106 in, and two of them with a saw cut of 1/4 in
 * between 212 1/4.
 */
class MaterialTest {
  private static final CellRef ROW = new CellRef("woods.csv", "", 2, 0);

  private static Length inches(String text) {
    return Jobs.inches(text);
  }

  private static Job job(Log... logs) {
    return new Job(
        Jobs.rules(false),
        Jobs.building(inches("120"), inches("96"), inches("6")),
        List.of(logs),
        List.of(),
        List.of());
  }

  private static Log log(String tag, String length) {
    return Jobs.log(tag, inches(length), "15", "14", "13");
  }

  private static Stem stem(String tag, Log.Traits traits, Stretch... bad) {
    Length length = inches("480");
    return new Stem(
        tag,
        length,
        DiameterProfile.of(length, inches("17"), inches("14"), inches("9")),
        List.of(bad),
        traits,
        false,
        ROW);
  }

  private static Job stems(Stem... stems) {
    return job().withStems(Stems.of(List.of(stems)));
  }

  private static String sources(Job job) {
    return new Material(job)
        .sources().stream()
            .map(each -> each.stem().tag() + (each.several() ? "*" : ""))
            .collect(Collectors.joining(" "));
  }

  @ParameterizedTest
  @CsvSource({"212 1/4, 1*", "212 3/16, 1", "480, 1*", "110, 1"})
  void aLogThatHoldsTwoPiecesMayBeCut(String length, String sources) {
    Job job = job(log("1", length));
    assertEquals(sources, sources(job));
    assertEquals(sources.endsWith("*"), new Material(job).hasLongLogs());
    Job whole = job.with(job.rules().with(Setting.CUT_IN_TWO, "no", Origin.OPTION));
    assertEquals("1", sources(whole));
  }

  /** A log that is wanted somewhere stays whole; a spare, a settled or a skipped one is none. */
  @Test
  void logsThatAreWantedStayWhole() {
    Log free = log("1", "300");
    assertEquals("1", sources(job(Kept.log(free, Log.Keep.SILL))));
    assertEquals("", sources(job(Kept.log(free, Log.Keep.SPARE))));
    assertEquals("", sources(job(free.skipped())));
    assertEquals("1", sources(job(free.placed(new Log.Wish("N", OptionalInt.empty())))));
    Job job = job(free);
    Pin pin = new Pin(OptionalInt.of(1), "N", "1", "", "", ROW);
    assertEquals(
        "1", sources(new Job(job.rules(), job.building(), job.logs(), List.of(), List.of(pin))));
    Job settled =
        job.withBuilt(
            AsBuilt.NOTHING.withPlaces(
                Map.of(new Place(1, "N"), new Held("1", inches("2"))), Map.of()));
    assertEquals("", sources(settled));
    Material material = new Material(settled);
    assertEquals(
        List.of(new Place(1, "N")), material.held().stream().map(FilledPlace::place).toList());
    assertEquals(0, material.boles(inches("8"), true).size());
  }

  /** 4 in of sweep in 40 ft are 4 x 106/480 in a piece for the shorter wall. */
  @ParameterizedTest
  @CsvSource({"'', 9, T*", "1, 4, T*", "7/8, 4, ''", "1, 5, ''"})
  void aStemTooCrookedForTheShortestPieceIsNone(String most, String sweep, String sources) {
    Job job =
        stems(stem("T", new Log.Traits("", Log.Bark.OFF, inches(sweep), Log.Keep.ANY, false, "")));
    Job limited =
        most.isEmpty()
            ? job
            : job.with(job.rules().with(Setting.SWEEP_MOST, inches(most), Origin.OPTION));
    assertEquals(sources, sources(limited));
  }

  @Test
  void aStemThatPiecesWereCutFromIsNone() {
    Stem stem = stem("T", Log.Traits.NONE);
    Log piece = stem.log("T-a", Length.ZERO, inches("110"));
    Map<String, CrossCut> cuts = Map.of("T-a", CrossCut.planned("T", Length.ZERO));
    Job cut = job(piece).withStems(new Stems(List.of(stem), cuts, Optional.empty()));
    assertEquals("T-a", sources(cut));
  }

  @Test
  void aStemGivesNoMorePiecesThanAreAskedFor() {
    Job job = stems(stem("T", Log.Traits.NONE));
    Job two = job.with(job.rules().with(Setting.STEM_MOST, new BigDecimal(2), Origin.OPTION));
    assertEquals(2, new Material(two).boles(inches("8"), true).get(0).most());
    assertTrue(new Material(job).boles(inches("8"), true).get(0).most() > 2);
  }

  /**
   * Whatever pieces are chosen, the job that is made of them cuts no bad wood, no wood twice and
   * leaves a saw cut between: reckoned from the logs themselves.
   */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void piecesAndSparesLieApartOnSoundWood(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Length bad = inches("" + (60 + random.nextInt(300)));
    Stretch crook = new Stretch(bad, bad.plus(inches("" + (10 + random.nextInt(60)))));
    Job job = stems(stem("T", Log.Traits.NONE, crook), stem("U", Log.Traits.NONE));
    Material material = new Material(job);
    List<Bole> boles = material.boles(inches("8"), true);
    int raw = material.raw(job.building().walls().get(1));
    List<Cut> cuts = new ArrayList<>();
    for (int number = 0; number < 2; number++) {
      int from = boles.get(number).free().get(0).from() + random.nextInt(8);
      if (from + raw <= boles.get(number).free().get(0).to()) {
        cuts.add(new Cut(number, from, raw));
      }
    }
    Job made = new CutLogs(job, material).with(boles, cuts);
    assertTrue(made.logs().size() > cuts.size(), "spares of what is left");
    Length kerf = job.rules().length(Setting.KERF);
    for (Stem stem : made.stems().all()) {
      Length end = kerf.negated();
      for (Log piece : made.stems().pieces(stem, made.logs())) {
        Length from = made.stems().from(piece);
        Length to = from.plus(piece.length());
        assertTrue(!from.isLessThan(end.plus(kerf)), piece.tag() + " lies in another");
        assertTrue(!to.isMoreThan(stem.length()), piece.tag() + " is past the end");
        for (Stretch each : stem.bad()) {
          assertTrue(!to.isMoreThan(each.from()) || !from.isLessThan(each.to()), piece.tag());
        }
        assertEquals(stem.profile().at(from), piece.butt());
        end = to;
      }
    }
    assertEquals(made.logs().size(), made.logs().stream().map(Log::tag).distinct().count());
    assertEquals(cuts.size(), new CutLogs(job, material).with(cuts).logs().size());
  }

  /** A log that gives one piece keeps its tag and is not cut; of two it becomes a stem. */
  @Test
  void aLogOfOnePieceStaysWhole() {
    Job job = job(log("1", "300"), log("2", "130"));
    Material material = new Material(job);
    int raw = material.raw(job.building().walls().get(1));
    CutLogs one = new CutLogs(job, material);
    Cut cut = new Cut(0, 0, raw);
    assertEquals(job.logs(), one.with(List.of(cut)).logs());
    assertEquals(Map.of(cut, "1"), one.tagged());
    Job two = new CutLogs(job, material).with(List.of(cut, new Cut(0, raw + 4, raw)));
    assertEquals("2 1a 1b", two.logs().stream().map(Log::tag).collect(Collectors.joining(" ")));
    assertTrue(two.stems().stem("1").orElseThrow().isLog());
  }
}
