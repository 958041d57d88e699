package roundbook.sheet.write;

import java.io.IOException;
import java.util.List;
import javax.xml.stream.XMLStreamException;
import roundbook.page.Area;
import roundbook.page.Figure;
import roundbook.units.Length;

/** Writes the part that says where the figures of a sheet lie. */
final class DrawingPart {
  static final String MAIN = "http://schemas.openxmlformats.org/drawingml/2006/main";
  static final String CHART = "http://schemas.openxmlformats.org/drawingml/2006/chart";
  static final String RELATIONS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String[] ROOT = {
    "xmlns:xdr", "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing",
    "xmlns:a", MAIN,
    "xmlns:r", RELATIONS
  };

  /** The file's own steps of length: 36 000 to the millimetre. */
  private static final double STEPS_A_NANOMETRE = 0.036;

  private final Xml xml;

  DrawingPart(Xml xml) {
    this.xml = xml;
  }

  void write(List<Figure> figures, List<String> relations) throws IOException {
    xml.part(
        "xdr:wsDr",
        ROOT,
        () -> {
          for (int index = 0; index < relations.size(); index++) {
            anchor(figures.get(index), index + 1, relations.get(index));
          }
        });
  }

  private void anchor(Figure figure, int number, String relation) throws XMLStreamException {
    if (figure.place() instanceof Figure.Over over) {
      Area area = over.area();
      xml.element(
          "xdr:twoCellAnchor",
          new String[] {"editAs", "twoCell"},
          () -> {
            marker("xdr:from", area.left() - 1, area.top() - 1, 0, 0);
            marker("xdr:to", area.right(), area.bottom(), 0, 0);
            figure(figure, number, relation);
          });
    } else if (figure.place() instanceof Figure.At at) {
      xml.element(
          "xdr:oneCellAnchor",
          () -> {
            int left = at.cell().left() - 1;
            marker("xdr:from", left, at.cell().top() - 1, steps(at.right()), steps(at.down()));
            String[] size = {"cx", "" + steps(at.width()), "cy", "" + steps(at.height())};
            xml.empty("xdr:ext", size);
            figure(figure, number, relation);
          });
    }
  }

  private void marker(String name, int column, int row, long right, long down)
      throws XMLStreamException {
    xml.element(
        name,
        () -> {
          xml.text("xdr:col", String.valueOf(column));
          xml.text("xdr:colOff", String.valueOf(right));
          xml.text("xdr:row", String.valueOf(row));
          xml.text("xdr:rowOff", String.valueOf(down));
        });
  }

  private static long steps(Length length) {
    return Math.round(length.nanometres() * STEPS_A_NANOMETRE);
  }

  private void figure(Figure figure, int number, String relation) throws XMLStreamException {
    if (figure instanceof Figure.Chart) {
      chart(figure, number, relation);
    } else {
      picture(figure, number, relation);
    }
    xml.empty("xdr:clientData");
  }

  private void named(String element, String name, int number, Figure figure)
      throws XMLStreamException {
    String id = String.valueOf(number);
    xml.empty(element, "id", id, "name", name + " " + id, "descr", figure.altText());
  }

  private void picture(Figure figure, int number, String relation) throws XMLStreamException {
    xml.element(
        "xdr:pic",
        () -> {
          xml.element(
              "xdr:nvPicPr",
              () -> {
                named("xdr:cNvPr", "Picture", number, figure);
                xml.element("xdr:cNvPicPr", () -> xml.empty("a:picLocks", "noChangeAspect", "1"));
              });
          xml.element(
              "xdr:blipFill",
              () -> {
                xml.empty("a:blip", "r:embed", relation);
                xml.element("a:stretch", () -> xml.empty("a:fillRect"));
              });
          xml.element(
              "xdr:spPr",
              () -> {
                xml.element("a:xfrm", this::origin);
                xml.element(
                    "a:prstGeom", new String[] {"prst", "rect"}, () -> xml.empty("a:avLst"));
              });
        });
  }

  private void origin() throws XMLStreamException {
    xml.empty("a:off", "x", "0", "y", "0");
    xml.empty("a:ext", "cx", "0", "cy", "0");
  }

  private void chart(Figure figure, int number, String relation) throws XMLStreamException {
    xml.element(
        "xdr:graphicFrame",
        new String[] {"macro", ""},
        () -> {
          xml.element(
              "xdr:nvGraphicFramePr",
              () -> {
                named("xdr:cNvPr", "Chart", number, figure);
                xml.empty("xdr:cNvGraphicFramePr");
              });
          xml.element("xdr:xfrm", this::origin);
          xml.element(
              "a:graphic",
              () ->
                  xml.element(
                      "a:graphicData",
                      new String[] {"uri", CHART},
                      () -> xml.empty("c:chart", "xmlns:c", CHART, "r:id", relation)));
        });
  }
}
