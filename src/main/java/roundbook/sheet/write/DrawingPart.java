package roundbook.sheet.write;

import java.util.List;
import roundbook.page.Area;
import roundbook.page.Figure;
import roundbook.units.Length;

/** Writes the part that says where the figures of a sheet lie. */
final class DrawingPart {
  static final String MAIN = "http://schemas.openxmlformats.org/drawingml/2006/main";
  static final String CHART = "http://schemas.openxmlformats.org/drawingml/2006/chart";
  static final String RELATIONS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String DRAWING =
      "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing";

  /** The file's own steps of length: 36 000 to the millimetre. */
  private static final double STEPS_A_NANOMETRE = 0.036;

  private final Xml xml = Xml.part();

  Xml written(List<Figure> figures, List<String> relations) {
    xml.open("xdr:wsDr").with("xmlns:xdr", DRAWING).with("xmlns:a", MAIN);
    xml.with("xmlns:r", RELATIONS);
    for (int index = 0; index < relations.size(); index++) {
      anchor(figures.get(index), index + 1, relations.get(index));
    }
    return xml.close();
  }

  private void anchor(Figure figure, int number, String relation) {
    if (figure.place() instanceof Figure.Over over) {
      Area area = over.area();
      xml.open("xdr:twoCellAnchor").with("editAs", "twoCell");
      marker("xdr:from", area.left() - 1, area.top() - 1, 0, 0);
      marker("xdr:to", area.right(), area.bottom(), 0, 0);
    } else if (figure.place() instanceof Figure.At at) {
      int left = at.cell().left() - 1;
      xml.open("xdr:oneCellAnchor");
      marker("xdr:from", left, at.cell().top() - 1, steps(at.right()), steps(at.down()));
      xml.open("xdr:ext").with("cx", steps(at.width())).with("cy", steps(at.height())).close();
    }
    if (figure instanceof Figure.Chart) {
      chart(figure, number, relation);
    } else {
      picture(figure, number, relation);
    }
    xml.open("xdr:clientData").close().close();
  }

  private void marker(String name, int column, int row, long right, long down) {
    xml.open(name);
    xml.text("xdr:col", String.valueOf(column)).text("xdr:colOff", String.valueOf(right));
    xml.text("xdr:row", String.valueOf(row)).text("xdr:rowOff", String.valueOf(down));
    xml.close();
  }

  private static long steps(Length length) {
    return Math.round(length.nanometres() * STEPS_A_NANOMETRE);
  }

  private void named(String name, int number, Figure figure) {
    xml.open("xdr:cNvPr").with("id", number).with("name", name + " " + number);
    xml.with("descr", figure.altText()).close();
  }

  private void picture(Figure figure, int number, String relation) {
    xml.open("xdr:pic").open("xdr:nvPicPr");
    named("Picture", number, figure);
    xml.open("xdr:cNvPicPr").open("a:picLocks").with("noChangeAspect", 1).close().close();
    xml.close().open("xdr:blipFill").open("a:blip").with("r:embed", relation).close();
    xml.open("a:stretch").open("a:fillRect").close().close().close();
    xml.open("xdr:spPr");
    origin("a:xfrm");
    xml.open("a:prstGeom").with("prst", "rect").open("a:avLst").close().close();
    xml.close().close();
  }

  private void origin(String name) {
    xml.open(name).open("a:off").with("x", 0).with("y", 0).close();
    xml.open("a:ext").with("cx", 0).with("cy", 0).close().close();
  }

  private void chart(Figure figure, int number, String relation) {
    xml.open("xdr:graphicFrame").with("macro", "").open("xdr:nvGraphicFramePr");
    named("Chart", number, figure);
    xml.open("xdr:cNvGraphicFramePr").close().close();
    origin("xdr:xfrm");
    xml.open("a:graphic").open("a:graphicData").with("uri", CHART);
    xml.open("c:chart").with("xmlns:c", CHART).with("r:id", relation).close();
    xml.close().close().close();
  }
}
