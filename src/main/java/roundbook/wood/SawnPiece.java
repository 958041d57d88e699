package roundbook.wood;

import java.util.ArrayList;
import java.util.List;
import roundbook.job.DiameterProfile.Station;
import roundbook.job.Piece;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/**
 * A trimmed piece sawn to a thickness: its volume and where it balances.
 *
 * @param piece the trimmed piece
 * @param thickness T, the thickness it is sawn to
 */
public record SawnPiece(Piece piece, Length thickness) {
  private static final int STRIPS = 64;

  /** Returns the sawn volume before notches, in cubic inches, exact for straight tapers. */
  public double cubicInches() {
    double sum = 0;
    List<Length> cuts = cuts();
    for (int i = 1; i < cuts.size(); i++) {
      sum +=
          Sawn.volume(
              piece.at(cuts.get(i - 1)).inches(),
              piece.at(cuts.get(i)).inches(),
              cuts.get(i).minus(cuts.get(i - 1)).inches(),
              thickness.inches());
    }
    return sum;
  }

  /** Returns the volume of the round piece before sawing, in cubic inches. */
  public double roundCubicInches() {
    double sum = 0;
    List<Length> cuts = cuts();
    for (int i = 1; i < cuts.size(); i++) {
      sum +=
          Sawn.round(
              piece.at(cuts.get(i - 1)).inches(),
              piece.at(cuts.get(i)).inches(),
              cuts.get(i).minus(cuts.get(i - 1)).inches());
    }
    return sum;
  }

  /**
   * Returns the distance of the balance point from the trimmed butt end, {@code ∫ u S(u) du / ∫
   * S(u) du} over the piece, by Simpson's rule on each straight stretch.
   */
  public Length balance() {
    double moment = 0;
    double area = 0;
    List<Length> cuts = cuts();
    for (int i = 1; i < cuts.size(); i++) {
      double from = cuts.get(i - 1).inches();
      double width = cuts.get(i).minus(cuts.get(i - 1)).inches() / STRIPS;
      double low = piece.at(cuts.get(i - 1)).inches();
      double rise = (piece.at(cuts.get(i)).inches() - low) / STRIPS;
      for (int strip = 0; strip <= STRIPS; strip++) {
        double weight = strip == 0 || strip == STRIPS ? 1 : strip % 2 == 0 ? 2 : 4;
        double section = weight * width / 3 * Sawn.section(low + rise * strip, thickness.inches());
        area += section;
        moment += section * (from + width * strip);
      }
    }
    return Length.of(moment / area, LengthUnit.INCH);
  }

  /** Returns where the outline is not straight: both ends and the stations between. */
  private List<Length> cuts() {
    List<Length> cuts = new ArrayList<>();
    cuts.add(Length.ZERO);
    for (Station station : piece.log().profile().stations()) {
      Length at = station.fromButt().minus(piece.cutOffButt());
      if (at.isMoreThan(Length.ZERO) && at.isLessThan(piece.trimmed())) {
        cuts.add(at);
      }
    }
    cuts.add(piece.trimmed());
    return cuts;
  }
}
