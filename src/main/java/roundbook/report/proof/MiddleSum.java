package roundbook.report.proof;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import roundbook.job.DiameterProfile.Station;
import roundbook.job.Piece;
import roundbook.report.live.LiveContext;
import roundbook.stack.FilledPlace;
import roundbook.units.Length;

/**
 * Where the first middle of round 1 comes from, in one sum: the middle is that of the trimmed log,
 * on a straight line between two diameters of the tally.
 */
final class MiddleSum {
  private final LiveContext live;
  private final Pencil pencil;

  MiddleSum(LiveContext live) {
    this.live = live;
    this.pencil = new Pencil(live);
  }

  /** Returns the sum in words; empty where that middle was measured or two logs make it. */
  Optional<String> words() {
    FilledPlace place = live.course(1).places().get(0);
    return place.isMeasured(live.plan().job().built()) || place.logs().size() > 1
        ? Optional.empty()
        : words(place.first().piece(), place.wall().name());
  }

  private Optional<String> words(Piece piece, String wall) {
    Length at = piece.cutOffButt().plus(piece.trimmed().dividedBy(2));
    List<Station> stations = piece.log().profile().stations();
    return IntStream.range(1, stations.size())
        .filter(i -> !stations.get(i).fromButt().isLessThan(at))
        .mapToObj(i -> words(piece, wall, at, stations.get(i - 1), stations.get(i)))
        .findFirst();
  }

  private String words(Piece piece, String wall, Length at, Station before, Station after) {
    return live.text(
        "proof.sums.middle",
        wall,
        piece.log().tag(),
        plain(at),
        plain(before.diameter()),
        plain(before.fromButt()),
        plain(after.diameter()),
        plain(after.fromButt()),
        plain(at.minus(before.fromButt())),
        plain(after.fromButt().minus(before.fromButt())),
        pencil.decimal(new Pencil.Value("", piece.mid())).now());
  }

  private String plain(Length length) {
    return pencil.mark(length).now();
  }
}
