package roundbook.rounds;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import roundbook.job.BuildRules;
import roundbook.job.DiameterProfile;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.problem.CellRef;
import roundbook.rounds.Shortage.Missing;
import roundbook.units.Length;

/**
 * Makes logs that a yard could send: just long enough, tapered as the job's logs commonly are.
 *
 * @param job the job that lacks them
 */
record OrderedLogs(Job job) {
  /** Returns the job with all logs of an order, each of a middle diameter taken from its line. */
  Job with(List<Missing> order, Function<Missing, Length> mid) {
    List<Log> more = new ArrayList<>();
    for (Missing line : order) {
      for (int i = 0; i < line.count(); i++) {
        more.add(log(more.size() + 1, line.least(), mid.apply(line)));
      }
    }
    return with(more);
  }

  /** Returns the job with more logs after its own. */
  Job with(List<Log> more) {
    return job.withLogs(Stream.concat(job.logs().stream(), more.stream()).toList());
  }

  /** Returns a log of a length and a middle diameter. */
  Log log(int number, Length length, Length mid) {
    Length butt = mid.plus(taper(length, log -> log.butt().minus(log.mid())));
    Length tip = mid.minus(taper(length, log -> log.mid().minus(log.tip())));
    return new Log(
        "(ordered " + number + ")",
        length,
        DiameterProfile.of(length, butt, mid, tip),
        Log.Sources.MEASURED,
        Log.Traits.NONE,
        Log.Wish.ANYWHERE,
        CellRef.ofFile(""),
        java.util.Map.of());
  }

  /**
   * Returns what the job's logs commonly taper on one half, over a length: the median, or where
   * thin tips are refused the lower quartile, for there a yard must send slim-tapered ones.
   */
  private Length taper(Length length, Function<Log, Length> half) {
    List<Length> all =
        usable().stream()
            .map(log -> half.apply(log).timesRatio(length.nanometres(), log.length().nanometres()))
            .sorted()
            .toList();
    Length usual = length.dividedBy(400);
    boolean refuses = job.rules().text(Setting.TIP_RULE).equals("refuse");
    return all.isEmpty() ? usual : all.get(all.size() / (refuses ? 4 : 2));
  }

  /**
   * Returns middle diameters to choose from, thin to thick: those of the job's logs and an inch (25
   * mm) more at each end, or about twice the thickness where there is no log.
   */
  List<Length> mids() {
    BuildRules rules = job.rules();
    Length step = step(rules);
    List<Length> own = usable().stream().map(Log::mid).sorted().toList();
    Length from = own.isEmpty() ? rules.thickness().times(2) : own.get(0);
    Length to = own.isEmpty() ? from : own.get(own.size() - 1);
    List<Length> mids = new ArrayList<>();
    Length last = to.plus(step.times(2));
    for (Length mid = from.roundedTo(step).minus(step.times(2));
        !mid.isMoreThan(last);
        mid = mid.plus(step)) {
      mids.add(mid);
    }
    return mids;
  }

  /** Returns the step of an order's middle diameters: half an inch or 10 mm. */
  static Length step(BuildRules rules) {
    return rules.metric() ? Length.ofMillimetres(10) : Length.ofInchFraction(1, 2);
  }

  private List<Log> usable() {
    Fit fit = new Fit(job);
    return job.logs().stream().filter(log -> fit.refused(log).isEmpty()).toList();
  }
}
