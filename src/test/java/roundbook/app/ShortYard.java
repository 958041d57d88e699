package roundbook.app;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.plan.ShortYards;

/** A job workbook of a yard with too few long logs, and a door with short logs beside it. */
final class ShortYard {
  private ShortYard() {}

  /** Writes the workbook {@code hut.xlsx} into a folder. */
  static Path write(Path folder, boolean asked, ShortYards yard) throws IOException {
    Job job = yard.job(asked);
    Path file = folder.resolve("hut.xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      Sheet settings = book.createSheet("Job");
      row(settings, "Name", "Value");
      row(settings, "Rounds", job.rules().rounds().getAsInt());
      row(settings, "Units", "in");
      Sheet walls = book.createSheet("Walls");
      row(walls, "Wall", "Outside length", "Laid first", "Thickness", "Remarks");
      for (String wall : List.of("N", "E", "S", "W")) {
        row(walls, wall, wall.equals("N") || wall.equals("S") ? "20'" : "14'");
      }
      Sheet logs = book.createSheet("Logs");
      row(logs, "Log", "Length (in)", "Butt (in)", "Mid (in)", "Tip (in)");
      for (Log log : job.logs()) {
        row(
            logs,
            log.tag(),
            log.length().inches(),
            log.butt().inches(),
            log.mid().inches(),
            log.tip().inches());
      }
      Sheet openings = book.createSheet("Openings");
      row(
          openings,
          "Name",
          "Wall",
          "From left corner (in)",
          "Width (in)",
          "Sill height (in)",
          "Head height (in)",
          "Cut after stacking or short logs");
      row(openings, "Door", "S", 100, 36, 0, 82, asked ? "short logs" : "cut after stacking");
      book.write(out);
    }
    return file;
  }

  private static void row(Sheet sheet, Object... values) {
    Row row = sheet.createRow(sheet.getPhysicalNumberOfRows());
    for (int at = 0; at < values.length; at++) {
      if (values[at] instanceof Number number) {
        row.createCell(at).setCellValue(number.doubleValue());
      } else {
        row.createCell(at).setCellValue(values[at].toString());
      }
    }
  }
}
