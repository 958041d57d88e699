package roundbook.crosscut;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import roundbook.bucking.Bole;
import roundbook.bucking.Bole.Stretch;
import roundbook.bucking.BuckingTask.Cut;
import roundbook.job.Job;
import roundbook.job.Setting;

/** Cuts stems by the usual rule, to tell what choosing the cuts with the plan saves. */
public final class ButtRule {
  private ButtRule() {}

  /**
   * Returns a job whose stems are cut from the butt, the longest piece first for as long as so long
   * ones are wanted.
   *
   * @param job the job, of whose stems nothing is cut
   * @param rounds how many rounds are wanted
   */
  public static Job cut(Job job, int rounds) {
    Material material = new Material(job);
    List<Bole> boles =
        material.boles(
            job.rules().optionalLength(Setting.TIP_LEAST).orElse(job.rules().thickness()), false);
    Map<Integer, Integer> wanted = new HashMap<>();
    job.building().walls().forEach(wall -> wanted.merge(material.raw(wall), rounds, Integer::sum));
    int kerf = material.grid().up(job.rules().length(Setting.KERF));
    List<Cut> cuts = new ArrayList<>();
    for (int i = 0; i < material.sources().size(); i++) {
      if (material.sources().get(i).log().isEmpty()) {
        for (Stretch free : boles.get(i).free()) {
          cut(i, free, kerf, wanted, cuts);
        }
      }
    }
    return new CutLogs(job, material).with(cuts);
  }

  private static void cut(
      int bole, Stretch free, int kerf, Map<Integer, Integer> wanted, List<Cut> cuts) {
    int from = free.from();
    Optional<Integer> raw = longest(wanted, free.to() - from);
    while (raw.isPresent()) {
      cuts.add(new Cut(bole, from, raw.get()));
      wanted.merge(raw.get(), -1, Integer::sum);
      from += raw.get() + kerf;
      raw = longest(wanted, free.to() - from);
    }
  }

  private static Optional<Integer> longest(Map<Integer, Integer> wanted, int room) {
    return wanted.entrySet().stream()
        .filter(each -> each.getValue() > 0 && each.getKey() <= room)
        .map(Map.Entry::getKey)
        .max(Integer::compare);
  }
}
