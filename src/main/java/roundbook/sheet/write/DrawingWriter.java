package roundbook.sheet.write;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackagePartName;
import org.apache.poi.openxml4j.opc.PackagingURIHelper;
import org.apache.poi.openxml4j.opc.TargetMode;
import org.apache.poi.xssf.usermodel.XSSFRelation;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import roundbook.page.Book;
import roundbook.page.Figure;

/**
 * Adds pictures and charts to the sheets of a workbook.
 *
 * <p>The parts are written as XML here: the library can place a figure only by its last cell, which
 * loses its true size, and the schemas that come with it lack hatched bars. Equal pictures become
 * one part.
 */
final class DrawingWriter {
  private final Book book;
  private final OPCPackage file;
  private final PictureParts pictures;
  private int drawings;
  private int charts;

  DrawingWriter(XSSFWorkbook workbook, Book book) {
    this.book = book;
    file = workbook.getPackage();
    pictures = new PictureParts(file);
  }

  /** Adds the figures of one sheet, in order. */
  void write(List<Figure> figures, XSSFSheet sheet) throws IOException {
    PackagePart drawing = part("/xl/drawings/drawing" + ++drawings + ".xml", XSSFRelation.DRAWINGS);
    String id = relate(sheet.getPackagePart(), drawing, XSSFRelation.DRAWINGS);
    sheet.getCTWorksheet().addNewDrawing().setId(id);
    Map<PackagePart, String> known = new HashMap<>();
    List<String> relations = new ArrayList<>();
    for (Figure figure : figures) {
      XSSFRelation kind =
          figure instanceof Figure.Chart ? XSSFRelation.CHART : XSSFRelation.IMAGE_PNG;
      PackagePart content = content(figure);
      relations.add(known.computeIfAbsent(content, part -> relate(drawing, part, kind)));
    }
    try (OutputStream out = drawing.getOutputStream()) {
      new DrawingPart(new Xml(out)).write(figures, relations);
    }
  }

  /** Returns the part with what a figure shows. */
  private PackagePart content(Figure figure) throws IOException {
    return figure instanceof Figure.Chart chart
        ? chart(chart)
        : pictures.of(((Figure.Picture) figure).png());
  }

  private PackagePart chart(Figure.Chart chart) throws IOException {
    PackagePart part = part("/xl/charts/chart" + ++charts + ".xml", XSSFRelation.CHART);
    try (OutputStream out = part.getOutputStream()) {
      new ChartPart(new Xml(out), book).write(chart);
    }
    return part;
  }

  private PackagePart part(String name, XSSFRelation kind) {
    return file.createPart(name(name), kind.getContentType());
  }

  static PackagePartName name(String name) {
    try {
      return PackagingURIHelper.createPartName(name);
    } catch (InvalidFormatException impossible) {
      throw new IllegalArgumentException(impossible);
    }
  }

  private static String relate(PackagePart from, PackagePart to, XSSFRelation kind) {
    return from.addRelationship(to.getPartName(), TargetMode.INTERNAL, kind.getRelation()).getId();
  }
}
