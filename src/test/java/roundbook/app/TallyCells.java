package roundbook.app;

import java.util.ArrayList;
import java.util.List;
import roundbook.app.MadeTally.True;
import roundbook.app.MadeTally.Use;
import roundbook.app.YardLogs.Steps;

/** Kinds of tallies that are odd in their cells: units, feet and inches, marks and readings. */
final class TallyCells {
  private TallyCells() {}

  static MadeTally feetAndInches(TallyMaker given) {
    TallyMaker maker = inInches(given);
    String[] pair =
        maker.any(
            new String[][] {
              {"Length ft", "in"},
              {"Length (ft)", "Length (in)"},
              {"Feet", "Inches"},
              {"Len. ft", "Len. in"}
            });
    MadeTally tally = MadeTally.of("feet and inches: " + String.join(",", pair));
    List<String> heads = maker.headings();
    heads.set(1, pair[0]);
    heads.add(2, pair[1]);
    tally.add(heads);
    maker.addLogs(
        tally,
        9,
        cells -> {
          String[] parts = cells.get(1).replace("\"", "").split("' ");
          cells.set(1, parts[0]);
          cells.add(2, parts[1]);
          return cells;
        });
    return tally;
  }

  /** Returns a maker whose tape writes feet and inches with marks. */
  private static TallyMaker inInches(TallyMaker given) {
    TallyMaker maker = given;
    while (maker.tape() != YardLogs.Tape.MARKS) {
      maker = new TallyMaker(maker.random().nextLong());
    }
    return maker;
  }

  static MadeTally hyphens(TallyMaker given) {
    TallyMaker maker = inInches(given);
    String head = maker.any("Length (ft-in)", "Length", "Length (ft)", "Length (ft.in)");
    String mark = head.contains(".in") ? "." : "-";
    boolean bare = mark.equals("-") && maker.random().nextBoolean();
    MadeTally tally = MadeTally.of("hyphens: " + head + (bare ? " and bare" : ""));
    List<String> heads = maker.headings();
    heads.set(1, head);
    tally.add(heads);
    maker.addLogs(
        tally,
        12,
        cells -> {
          String[] parts = cells.get(1).replace("\"", "").split("' ");
          boolean whole = bare && parts[1].equals("0");
          cells.set(
              1,
              whole
                  ? parts[0]
                  : parts[0]
                      + mark
                      + (mark.equals(".") && parts[1].length() < 2 ? "0" : "")
                      + parts[1]);
          return cells;
        });
    return tally;
  }

  static MadeTally skips(TallyMaker maker) {
    String head = maker.any("Skip", "Reject", "Cull");
    MadeTally tally = MadeTally.of("skips: " + head);
    tally.add(TallyMaker.with(maker.headings(), false, head));
    List<Steps> logs = maker.yard().logs(9);
    String[] yes = {"x", "yes", "rotten", "✓", "sold", "1", "broken"};
    for (int i = 0; i < logs.size(); i++) {
      boolean out = i % 3 == 1;
      String tag = "S" + i;
      String word = out ? maker.any(yes) : maker.any("", "", "no");
      int at = tally.add(TallyMaker.with(maker.cells(tag, logs.get(i)), false, word));
      tally.truth().add(maker.yard().truth(at, tag, logs.get(i)).as(out ? Use.SKIP : Use.READ));
    }
    return tally;
  }

  static MadeTally across(TallyMaker maker) {
    String[] pair =
        maker.any(new String[][] {{"Mid 1", "Mid 2"}, {"Mid max", "Mid min"}, {"Mid a", "Mid b"}});
    MadeTally tally = MadeTally.of("across: " + String.join(",", pair));
    String unit = maker.tape().diameter;
    tally.add(
        List.of(
            "Log",
            "Length " + maker.tape().length,
            "Butt " + unit,
            pair[0] + " (" + unit + ")",
            pair[1] + " (" + unit + ")",
            "Tip " + unit));
    List<Steps> logs = maker.yard().logs(8);
    for (int i = 0; i < logs.size(); i++) {
      Steps log = logs.get(i);
      List<String> cells = maker.cells("C" + i, log);
      int at =
          tally.add(
              List.of(
                  cells.get(0),
                  cells.get(1),
                  cells.get(2),
                  maker.yard().diameter(log.mid() + 2),
                  maker.yard().diameter(log.mid() - 2),
                  cells.get(4)));
      tally.truth().add(maker.yard().truth(at, "C" + i, log));
    }
    return tally;
  }

  /** One cell is written so that it must be read as it was meant, or asked about. */
  static MadeTally oddNumbers(TallyMaker maker) {
    MadeTally tally = TallyKinds.with(maker, "odd number", heads -> heads);
    int row = 1 + maker.random().nextInt(tally.truth().size() - 1);
    int column = 2 + maker.random().nextInt(3);
    List<String> cells = new ArrayList<>(tally.rows().get(row));
    String text = cells.get(column);
    String arabic =
        text.chars()
            .mapToObj(
                each ->
                    Character.isDigit(each) ? "" + (char) (each - '0' + 0x0660) : "" + (char) each)
            .reduce("", String::concat);
    String odd = maker.any(text + "*", arabic, "\"", "ca. " + text, text + "?", "ditto", "〃");
    cells.set(column, odd);
    tally.rows().set(row, cells);
    List<True> truth = new ArrayList<>(tally.truth());
    truth.replaceAll(each -> each.row() == row + 1 ? each.as(Use.ASK) : each);
    return new MadeTally("odd number: " + odd, tally.rows(), truth);
  }

  static MadeTally unitsInCells(TallyMaker maker) {
    MadeTally tally = MadeTally.of("units in cells, one bare");
    tally.add(List.of("Log", "Length", "Butt", "Mid", "Tip", "Species"));
    int[] row = {0};
    boolean marks = maker.tape() == YardLogs.Tape.MARKS;
    maker.addLogs(
        tally,
        9,
        cells -> {
          boolean bare = row[0]++ == 4;
          if (!marks) {
            cells.set(1, cells.get(1) + " " + maker.tape().length);
          }
          for (int i = 2; i < 5; i++) {
            cells.set(i, cells.get(i) + (bare ? "" : " " + maker.tape().diameter));
          }
          return cells;
        });
    return tally;
  }

  static MadeTally sweepClasses(TallyMaker maker) {
    return maker.beside("sweep classes", false, "Sweep", "S1", "S2", "S3");
  }

  /** One diameter is written in another unit than its column. */
  static MadeTally factor(TallyMaker maker) {
    MadeTally tally = TallyKinds.with(maker, "factor", heads -> heads);
    int row = 2 + maker.random().nextInt(tally.truth().size() - 2);
    List<String> cells = new ArrayList<>(tally.rows().get(row));
    True log = tally.truth().get(row - 1);
    boolean inches = !maker.tape().metric();
    cells.set(3, YardLogs.decimal(inches ? log.mid() / 10 : log.mid() / 25.4, 1));
    tally.rows().set(row, cells);
    tally.truth().set(row - 1, log.as(Use.ASK));
    return tally;
  }

  static MadeTally noUnits(TallyMaker maker) {
    MadeTally tally =
        TallyKinds.with(maker, "no units", heads -> new ArrayList<>(List.of(maker.words())));
    return maker.tape() == YardLogs.Tape.DECIMETRES ? TallyMaker.asked(tally) : tally;
  }

  static MadeTally notDiameters(TallyMaker maker) {
    String what = maker.any("radius", "quarter girth", "basal area");
    return TallyMaker.asked(
        TallyKinds.with(
            maker,
            "not diameters: " + what,
            heads -> {
              for (int i = 2; i < 5; i++) {
                heads.set(i, maker.any("Butt ", "Mid ", "Tip ") + what);
              }
              return heads;
            }));
  }
}
