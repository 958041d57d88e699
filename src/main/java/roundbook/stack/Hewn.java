package roundbook.stack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundbook.job.DiameterProfile;
import roundbook.job.DiameterProfile.Station;
import roundbook.job.Piece;
import roundbook.units.Length;

/**
 * Diameters measured on a trimmed log after hewing, which replace the tally's.
 *
 * <p>A middle diameter alone shifts the whole profile by what it differs, for taper changes little
 * under the axe. On a side whose end was measured too, the profile runs straight from the middle to
 * that end.
 *
 * @param butt at the trimmed butt end, if measured
 * @param mid at the middle of the trimmed log, if measured
 * @param tip at the trimmed tip end, if measured
 */
public record Hewn(Optional<Length> butt, Optional<Length> mid, Optional<Length> tip) {

  /** Returns the piece with its log's profile as hewn; lengths stay. */
  public Piece of(Piece planned) {
    Length middle = mid.orElse(planned.mid());
    Length shift = middle.minus(planned.mid());
    Length half = planned.trimmed().dividedBy(2);
    List<Station> stations = new ArrayList<>();
    stations.add(new Station(half, middle));
    if (butt.isPresent()) {
      stations.add(new Station(Length.ZERO, butt.get()));
    } else {
      stations.addAll(shifted(planned, shift, Length.ZERO, half));
    }
    if (tip.isPresent()) {
      stations.add(new Station(planned.trimmed(), tip.get()));
    } else {
      stations.addAll(shifted(planned, shift, half, planned.trimmed()));
    }
    return withProfile(planned, stations);
  }

  private static List<Station> shifted(Piece planned, Length shift, Length from, Length to) {
    List<Station> stations = new ArrayList<>();
    boolean buttSide = from.isZero();
    Length end = buttSide ? from : to;
    stations.add(new Station(end, planned.at(end).plus(shift)));
    for (Station station : planned.log().profile().stations()) {
      Length along = station.fromButt().minus(planned.cutOffButt());
      if (along.isMoreThan(from) && along.isLessThan(to)) {
        stations.add(new Station(along, station.diameter().plus(shift)));
      }
    }
    return stations;
  }

  private static Piece withProfile(Piece planned, List<Station> fromCut) {
    List<Station> fromButt =
        fromCut.stream()
            .map(each -> new Station(each.fromButt().plus(planned.cutOffButt()), each.diameter()))
            .toList();
    var hewn = planned.log().measured(new DiameterProfile(fromButt));
    return new Piece(hewn, planned.cutOffButt(), planned.trimmed());
  }
}
