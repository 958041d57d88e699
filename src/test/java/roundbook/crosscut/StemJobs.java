package roundbook.crosscut;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import roundbook.job.BuildRules;
import roundbook.job.BuildRules.Origin;
import roundbook.job.DiameterProfile;
import roundbook.job.DiameterProfile.Station;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.job.Stem;
import roundbook.job.Stem.Stretch;
import roundbook.job.Stems;
import roundbook.plan.Jobs;
import roundbook.problem.CellRef;
import roundbook.units.Length;

/** Jobs of stems and of long logs, made up. */
public final class StemJobs {
  private StemJobs() {}

  /**
   * Returns a job of 10 by 8 ft walls and so many stems of 32 to 46 ft, one of them with a crook.
   */
  public static Job stems(int count, int rounds) {
    List<Stem> stems = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      Length length = Length.ofInches(384 + 24 * (i % 8));
      List<Station> stations = new ArrayList<>();
      for (int at : new int[] {0, 12, 24, 48}) {
        stations.add(station(i, at));
      }
      for (int at = 96; at <= length.inches(); at += 48) {
        stations.add(station(i, at));
      }
      Length measured = stations.get(stations.size() - 1).fromButt();
      List<Stretch> bad = new ArrayList<>();
      if (i == 1) {
        bad.add(new Stretch(Length.ofInches(100), Length.ofInches(130)));
      }
      if (measured.isLessThan(length)) {
        bad.add(new Stretch(measured, length));
      }
      stems.add(
          new Stem(
              "" + i,
              length,
              new DiameterProfile(stations),
              bad,
              Log.Traits.NONE,
              false,
              new CellRef("made-up.csv", "", i + 1, 0)));
    }
    return job(rounds, 120, 96, List.of()).withStems(Stems.of(stems));
  }

  private static Station station(int stem, int at) {
    double flare = 2.5 * StrictMath.exp(-at / 14.0);
    double inches = 14.5 + stem % 5 * 0.4 + flare - at * 0.011;
    return new Station(Length.ofInches(at), Length.ofInchFraction(StrictMath.round(inches * 4), 4));
  }

  /** Returns the sauna: fourteen logs of 26 ft, which hold 12' 6" and 10' 6" each. */
  public static Job sauna() {
    List<Log> logs = new ArrayList<>();
    for (int i = 1; i <= 14; i++) {
      Length mid = Length.ofInchFraction(44 + i % 7, 4);
      Length length = Length.ofInches(312);
      Length more = Length.ofInchFraction(5, 4);
      logs.add(
          Jobs.log(
              "" + i, length, DiameterProfile.of(length, mid.plus(more), mid, mid.minus(more))));
    }
    return job(0, 144, 120, logs);
  }

  private static Job job(int rounds, int northSouth, int eastWest, List<Log> logs) {
    BuildRules rules = Jobs.rules(false);
    if (rounds > 0) {
      rules = rules.with(Setting.ROUNDS, BigDecimal.valueOf(rounds), Origin.OPTION);
    }
    return new Job(
        rules,
        Jobs.building(Length.ofInches(northSouth), Length.ofInches(eastWest), rules.thickness()),
        logs,
        List.of(),
        List.of());
  }
}
