package roundbook.page;

import java.util.Objects;

/**
 * How a sheet prints: paper, direction, fit, header and footer.
 *
 * <p>Margins and the header's font come from the template's page of the same {@link PageKind}. In
 * header and footer text {@code {page}} and {@code {pages}} stand for the numbers; any other text,
 * with ampersands too, is printed as it is.
 *
 * @param kind the template's page to take the margins from
 * @param paper the size of paper
 * @param landscape whether the long side lies level
 * @param fit how the sheet is scaled
 * @param header what stands over each page
 * @param footer what stands under each page
 */
public record PageSetup(
    PageKind kind, Paper paper, boolean landscape, Fit fit, Band header, Band footer) {
  private static final double POINTS_AN_INCH = 72;

  /** Checks that nothing is missing. */
  public PageSetup {
    Objects.requireNonNull(kind);
    Objects.requireNonNull(paper);
    Objects.requireNonNull(fit);
    Objects.requireNonNull(header);
    Objects.requireNonNull(footer);
  }

  /** The sizes of paper that sheets are made for. */
  public enum Paper {
    /** 8 1/2 by 11 in. */
    LETTER(612, 792),
    /** 210 by 297 mm. */
    A4(595, 842);

    private final double wide;
    private final double tall;

    Paper(double wide, double tall) {
      this.wide = wide;
      this.tall = tall;
    }
  }

  /** The margins of pages in inches. */
  public record Margins(
      double left, double right, double top, double bottom, double header, double footer) {}

  /** The kinds of pages that the template knows, each with its own margins. */
  public enum PageKind {
    /** Held in the hand on site: narrow margins. */
    SITE(new Margins(0.4, 0.4, 0.65, 0.55, 0.3, 0.25)),
    /** A table to be filed: wider margins. */
    TABLE(new Margins(0.6, 0.5, 0.75, 0.65, 0.35, 0.3)),
    /** Drawn at full size: the least margins, never scaled. */
    FULL_SIZE(new Margins(0.4, 0.4, 0.6, 0.5, 0.3, 0.25));

    private final Margins margins;

    PageKind(Margins margins) {
      this.margins = margins;
    }

    /** Returns the margins that the standard template has. */
    public Margins margins() {
      return margins;
    }
  }

  /**
   * How a sheet is scaled to the paper.
   *
   * @param wide how many pages wide, or 0 for no scaling at all (100 %)
   * @param tall how many pages tall, or 0 for as many as are needed
   */
  public record Fit(int wide, int tall) {
    /** One page in all. */
    public static final Fit ONE_PAGE = new Fit(1, 1);

    /** One page wide, as many tall as are needed. */
    public static final Fit ONE_WIDE = new Fit(1, 0);

    /** As large as it is, for what must print at its own size. */
    public static final Fit FULL_SIZE = new Fit(0, 0);

    /** Returns whether the sheet is printed at 100 %. */
    public boolean isFullSize() {
      return wide == 0;
    }
  }

  /**
   * The three texts of a header or footer.
   *
   * @param left at the left
   * @param centre in the middle
   * @param right at the right
   */
  public record Band(String left, String centre, String right) {
    /** No text at all. */
    public static final Band NONE = new Band("", "", "");
  }

  /** Returns an upright page of a kind without header and footer, fitted one page wide. */
  public static PageSetup of(PageKind kind, Paper paper) {
    Fit fit = kind == PageKind.FULL_SIZE ? Fit.FULL_SIZE : Fit.ONE_WIDE;
    return new PageSetup(kind, paper, false, fit, Band.NONE, Band.NONE);
  }

  /** Returns how wide a page is between the standard template's margins, in points. */
  public double wide() {
    double paperWide = landscape ? paper.tall : paper.wide;
    return paperWide - POINTS_AN_INCH * (kind.margins.left() + kind.margins.right());
  }

  /** Returns how high a page is between the standard template's margins, in points. */
  public double high() {
    double paperHigh = landscape ? paper.wide : paper.tall;
    return paperHigh - POINTS_AN_INCH * (kind.margins.top() + kind.margins.bottom());
  }

  /**
   * Returns how much smaller something is printed, 1 at its own size: where it is to fit one page
   * wide, as much as its width asks for.
   *
   * @param columns the width of all its columns, in points
   */
  public double scale(double columns) {
    return fit.isFullSize() ? 1 : Math.min(1, wide() / columns);
  }

  /** Returns this page lying on its long side. */
  public PageSetup lying() {
    return new PageSetup(kind, paper, true, fit, header, footer);
  }

  /** Returns this page with another fit. */
  public PageSetup fit(Fit other) {
    return new PageSetup(kind, paper, landscape, other, header, footer);
  }

  /** Returns this page with a header. */
  public PageSetup header(String left, String centre, String right) {
    return new PageSetup(kind, paper, landscape, fit, new Band(left, centre, right), footer);
  }

  /** Returns this page with a footer. */
  public PageSetup footer(String left, String centre, String right) {
    return new PageSetup(kind, paper, landscape, fit, header, new Band(left, centre, right));
  }
}
