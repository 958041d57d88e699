package roundbook.crosscut;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import roundbook.bucking.Bole;
import roundbook.bucking.Bole.Stretch;
import roundbook.bucking.BuckingTask.Cut;
import roundbook.bucking.PricedCuts;
import roundbook.bucking.PricedCuts.Priced;
import roundbook.crosscut.Material.Source;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Opening;
import roundbook.job.Setting;
import roundbook.job.Stem;
import roundbook.job.Stems;
import roundbook.job.Stems.CrossCut;
import roundbook.rounds.Grid;
import roundbook.units.Length;

/** Makes logs of the pieces that stems are cut into, and spares of what is left of them. */
final class CutLogs {
  private static final double LONGER = 1_000;

  private final Job job;
  private final Material material;
  private final Grid grid;
  private final Set<String> tags = new HashSet<>();
  private final Map<Cut, String> tagged = new HashMap<>();

  CutLogs(Job job, Material material) {
    this.job = job;
    this.material = material;
    this.grid = material.grid();
    job.logs().forEach(log -> tags.add(log.tag()));
    job.stems().all().forEach(stem -> tags.add(stem.tag()));
    tags.addAll(job.stems().cuts().keySet());
  }

  /** Returns the tags of the logs that pieces became, by piece; a whole log keeps its own. */
  Map<Cut, String> tagged() {
    return tagged;
  }

  /**
   * Returns the job with these pieces of its stems, and spares of what is left; a log that gives
   * one piece stays whole.
   */
  Job with(List<Bole> boles, List<Cut> cuts) {
    return with(cuts, (number, own) -> spares(number, boles.get(number), own));
  }

  /** Returns the job with these pieces of its stems alone. */
  Job with(List<Cut> cuts) {
    return with(cuts, (number, own) -> List.of());
  }

  private Job with(List<Cut> cuts, BiFunction<Integer, List<Cut>, List<Cut>> spares) {
    List<Log> logs = new ArrayList<>(job.logs());
    List<Stem> stems = new ArrayList<>(job.stems().all());
    Map<String, CrossCut> crossCuts = new LinkedHashMap<>(job.stems().cuts());
    for (int i = 0; i < material.sources().size(); i++) {
      int number = i;
      Source source = material.sources().get(i);
      List<Cut> own = new ArrayList<>(cuts.stream().filter(cut -> cut.bole() == number).toList());
      if (source.log().isPresent() && own.size() < 2) {
        own.forEach(cut -> tagged.put(cut, source.stem().tag()));
        continue;
      }
      source.log().ifPresent(log -> logs.remove(job.logs().get(log)));
      source.log().ifPresent(log -> stems.add(source.stem()));
      own.addAll(spares.apply(number, own));
      own.sort(Comparator.comparingInt(Cut::from));
      for (Cut cut : own) {
        Length from = grid.length(cut.from());
        Log log = source.stem().log(tag(source.stem()), from, grid.length(cut.raw()));
        logs.add(log);
        tagged.put(cut, log.tag());
        crossCuts.put(log.tag(), CrossCut.planned(source.stem().tag(), from));
      }
    }
    crossCuts.keySet().retainAll(logs.stream().map(Log::tag).collect(Collectors.toSet()));
    return job.withLogs(logs).withStems(new Stems(stems, crossCuts, job.stems().byRule()));
  }

  /** Returns pieces for whole walls of what is left, the longest first, then for short logs. */
  private List<Cut> spares(int number, Bole bole, List<Cut> cuts) {
    int kerf = grid.up(job.rules().length(Setting.KERF));
    List<Priced> lengths = new ArrayList<>();
    job.building().walls().stream()
        .map(material::raw)
        .distinct()
        .sorted()
        .forEach(raw -> lengths.add(new Priced(raw, StrictMath.pow(LONGER, lengths.size()))));
    List<Cut> spares = new ArrayList<>();
    for (Stretch room : rooms(bole, cuts, kerf)) {
      int most = bole.most() - cuts.size() - spares.size();
      PricedCuts.best(room, kerf, lengths).stream()
          .limit(Math.max(0, most))
          .forEach(laid -> spares.add(new Cut(number, laid.from(), laid.raw())));
    }
    if (job.openings().stream().anyMatch(Opening::shortLogs)) {
      List<Cut> all = new ArrayList<>(cuts);
      all.addAll(spares);
      int least = grid.up(job.rules().length(Setting.PIECE_LEAST).plus(Length.ofInches(24)));
      rooms(bole, all, kerf).stream()
          .filter(room -> room.length() >= least && all.size() < bole.most())
          .forEach(room -> spares.add(new Cut(number, room.from(), room.length())));
    }
    return spares;
  }

  /** Returns what of the free stretches no piece has, a kerf away from each. */
  private static List<Stretch> rooms(Bole bole, List<Cut> cuts, int kerf) {
    List<Cut> rising = cuts.stream().sorted(Comparator.comparingInt(Cut::from)).toList();
    List<Stretch> rooms = new ArrayList<>();
    for (Stretch free : bole.free()) {
      int from = free.from();
      for (Cut cut : rising) {
        if (cut.to() > free.from() && cut.from() < free.to()) {
          rooms.add(new Stretch(from, cut.from() - kerf));
          from = cut.to() + kerf;
        }
      }
      rooms.add(new Stretch(from, free.to()));
    }
    rooms.removeIf(room -> room.length() <= 0);
    return rooms;
  }

  /** Returns a tag that no log has: the stem's with a letter. */
  private String tag(Stem stem) {
    for (int i = 0; ; i++) {
      String letter = i < 26 ? String.valueOf((char) ('a' + i)) : "-" + (i + 1);
      if (tags.add(stem.tag() + letter)) {
        return stem.tag() + letter;
      }
    }
  }
}
