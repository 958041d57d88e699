package roundbook.app;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import roundbook.app.YardLogs.Steps;

/** The kinds of tallies that were ever misread, and clean ones. */
final class TallyKinds {
  private static final String[] STATISTICS = {
    "Average",
    "Median",
    "Mean",
    "Max",
    "Min",
    "Total",
    "Mittelwert",
    "Durchschnitt",
    "Summe",
    "Moyenne",
    "Médiane",
    "Medelvärde",
    "Summa",
    "Keskiarvo",
    "Yhteensä",
    "Promedio",
    "Mediana",
    "Least",
    "Most",
    "Std. dev.",
    "AVG",
    "Largest",
    "Smallest",
    "Kleinster",
    "Total:",
    "Suma",
    "Средний",
    "Średnia",
    "Gjennomsnitt",
    "Grand total",
    "Σ"
  };

  private static final List<Function<TallyMaker, MadeTally>> KINDS =
      List.of(
          maker -> maker.plain("clean"),
          maker -> maker.plain("clean"),
          maker -> maker.plain("clean"),
          TallyKinds::preposition,
          TallyKinds::twoUnits,
          TallyKinds::secondTable,
          TallyKinds::group,
          TallyKinds::threeRows,
          TallyKinds::runningNumber,
          TallyKinds::loads,
          TallyKinds::counts,
          TallyKinds::statistics,
          TallyKinds::statistics,
          TallyKinds::sideBySide,
          TallyCells::feetAndInches,
          TallyCells::hyphens,
          TallyKinds::decoy,
          TallyKinds::decoy,
          TallyCells::skips,
          TallyKinds::secondId,
          TallyCells::across,
          TallyCells::oddNumbers,
          TallyKinds::numbered,
          TallyCells::unitsInCells,
          TallyCells::sweepClasses,
          TallyCells::factor,
          TallyCells::noUnits,
          TallyCells::notDiameters,
          TallyKinds::oneAnother);

  private TallyKinds() {}

  /** Makes the tally of a number. */
  static MadeTally make(int number) {
    return KINDS.get(number % KINDS.size()).apply(new TallyMaker(9000 + number));
  }

  static MadeTally with(TallyMaker maker, String kind, UnaryOperator<List<String>> heads) {
    MadeTally tally = MadeTally.of(kind);
    tally.add(heads.apply(maker.headings()));
    maker.addLogs(tally, 9, cells -> cells);
    return tally;
  }

  private static MadeTally preposition(TallyMaker maker) {
    String unit = "(" + maker.tape().diameter + ")";
    String[] forms = {
      maker.any("Mid " + unit + " in bark", "Mitte " + unit + " in Rinde"),
      "Middle dia " + maker.tape().diameter + " (in bark)",
      "Mid " + unit + " measured in yard",
      "Durchmesser in der Mitte " + unit
    };
    String form = maker.any(forms);
    return with(
        maker,
        "preposition: " + form,
        heads -> {
          heads.set(3, form);
          return heads;
        });
  }

  private static MadeTally twoUnits(TallyMaker maker) {
    boolean along = maker.random().nextBoolean();
    String form = along ? maker.any("Length (ft or m)", "Length m/ft") : "Mid (in/cm)";
    return TallyMaker.asked(
        with(
            maker,
            "two units: " + form,
            heads -> {
              heads.set(along ? 1 : 3, form);
              return heads;
            }));
  }

  private static MadeTally secondTable(TallyMaker maker) {
    MadeTally tally = MadeTally.of("second table");
    tally.add(maker.headings());
    maker.addLogs(tally, 6, cells -> cells);
    tally.add(List.of(""));
    TallyMaker other = new TallyMaker(maker.random().nextLong());
    tally.add(other.headings());
    List<Steps> logs = other.yard().logs(5);
    for (int i = 0; i < logs.size(); i++) {
      String tag = "Z" + i;
      int row = tally.add(other.cells(tag, logs.get(i)));
      tally.truth().add(other.yard().truth(row, tag, logs.get(i)));
    }
    return tally;
  }

  private static MadeTally group(TallyMaker maker) {
    MadeTally tally = MadeTally.of("lone group heading");
    tally.add(List.of("", "", maker.united("Diameter", maker.tape().diameter), "", "", ""));
    tally.add(
        List.of(
            "Log", maker.united("Length", maker.tape().length), "Butt", "Mid", "Tip", "Species"));
    maker.addLogs(tally, 9, cells -> cells);
    return tally;
  }

  private static MadeTally threeRows(TallyMaker maker) {
    MadeTally tally = MadeTally.of("three heading rows");
    tally.add(List.of("Log", "Length", "Diameter", "", "", "Species"));
    tally.add(List.of("", "", "Butt", "Mid", "Tip", ""));
    String unit = "(" + maker.tape().diameter + ")";
    tally.add(List.of("", "(" + maker.tape().length + ")", unit, unit, unit, ""));
    maker.addLogs(tally, 9, cells -> cells);
    return tally;
  }

  private static MadeTally runningNumber(TallyMaker maker) {
    String[] pair =
        maker.any(
            new String[][] {
              {"No.", "Tag"}, {"#", "Log"}, {"lfd. Nr.", "Stamm-Nr."}, {"Row", "Log ID"},
              {"Nr", "Stocknr"}, {"Line", "Tag no"}, {"Barcode", "Tag"}, {"N°", "Grume"}
            });
    MadeTally tally = MadeTally.of("running number: " + String.join(",", pair));
    List<String> heads = maker.headings();
    heads.set(0, pair[1]);
    tally.add(TallyMaker.with(heads, true, pair[0]));
    int[] row = {pair[0].equals("Barcode") ? 501230 : 0};
    maker.addLogs(tally, 9, cells -> TallyMaker.with(cells, true, String.valueOf(++row[0])));
    return tally;
  }

  private static MadeTally loads(TallyMaker maker) {
    String[] pair =
        maker.any(
            new String[][] {{"Load", "Log"}, {"Deck", "No"}, {"Los", "Nr."}, {"Lot", "Log no."}});
    MadeTally tally = MadeTally.of("loads: " + String.join(",", pair));
    List<String> heads = maker.headings();
    heads.set(0, pair[1]);
    tally.add(TallyMaker.with(heads, true, pair[0]));
    List<Steps> logs = maker.yard().logs(8);
    for (int i = 0; i < logs.size(); i++) {
      String lot = String.valueOf(7 + i / 4);
      String number = String.valueOf(1 + i % 4);
      int at = tally.add(TallyMaker.with(maker.cells(number, logs.get(i)), true, lot));
      tally.truth().add(maker.yard().truth(at, lot + "-" + number, logs.get(i)));
    }
    return tally;
  }

  private static MadeTally counts(TallyMaker maker) {
    return maker.beside("count", maker.random().nextBoolean(), maker.any("Pcs", "Qty"), "1");
  }

  /** Adds a row of figures over the others at any place, its word in any of its cells. */
  private static MadeTally statistics(TallyMaker maker) {
    MadeTally tally = with(maker, "statistics", heads -> heads);
    List<String> figures = maker.cells("", maker.yard().logs(1).get(0));
    figures.set(0, "");
    figures.set(5, "");
    String word = maker.any(STATISTICS);
    figures.set(maker.any(0, 0, 5), word);
    if (maker.random().nextBoolean()) {
      figures.set(1, "");
    }
    tally.add(figures);
    return new MadeTally("statistics: " + word, tally.rows(), tally.truth());
  }

  private static MadeTally sideBySide(TallyMaker maker) {
    MadeTally tally = MadeTally.of("side by side");
    List<String> heads = maker.headings();
    List<String> both = new ArrayList<>(heads);
    both.add("");
    both.addAll(heads);
    tally.add(both);
    List<Steps> logs = maker.yard().logs(10);
    for (int i = 0; i < 5; i++) {
      List<String> row = new ArrayList<>(maker.cells("L" + i, logs.get(i)));
      row.add("");
      boolean last = i == 4;
      List<String> right = maker.cells(last ? "Average" : "R" + i, logs.get(5 + i));
      row.addAll(right);
      int at = tally.add(row);
      tally.truth().add(maker.yard().truth(at, "L" + i, logs.get(i)));
      if (!last) {
        tally.truth().add(maker.yard().truth(at, "R" + i, logs.get(5 + i)));
      }
    }
    return tally;
  }

  private static MadeTally decoy(TallyMaker maker) {
    String[][] decoys = {
      {"Large knots", "2", "3", "0"},
      {"Butt rot", "2", "0", "5"},
      {"Top bid", "14", "12.5", "16"},
      {"Small defects", "4", "6", "8"},
      {"Wall length", "18", "20", "24"},
      {"Nominal length", "16", "18", "20"},
      {"Basal area", "0.8", "0.9"},
      {"Butt radius (cm)", "16", "17", "15"},
      {"Girth class", "4", "5"},
      {"Cull %", "1", "5", "10"},
      {"Volume m3", "0.41", "0.38"},
      {"Large end defect (in)", "4", "5", "6"},
      {"Top price", "12", "13"},
      {"Grade", "A", "B"},
      {"Long", "24.1234", "24.2231"},
      {"Butt bark (mm)", "12", "14"},
    };
    String[] decoy = maker.any(decoys);
    boolean first = maker.random().nextBoolean();
    String[] values = java.util.Arrays.copyOfRange(decoy, 1, decoy.length);
    if (decoy[0].equals("Long")) {
      MadeTally tally = MadeTally.of("decoy: Lat,Long");
      tally.add(TallyMaker.with(TallyMaker.with(maker.headings(), true, "Long"), true, "Lat"));
      maker.addLogs(
          tally,
          9,
          cells -> TallyMaker.with(TallyMaker.with(cells, true, "24.2231"), true, "61.4"));
      return tally;
    }
    return maker.beside("decoy", first, decoy[0], values);
  }

  private static MadeTally secondId(TallyMaker maker) {
    MadeTally tally = MadeTally.of("second id");
    List<String> heads = maker.headings();
    heads.set(0, "Log");
    heads.add(maker.any("Barcode", "Label", "No.", "Tree"));
    heads.add("Remarks");
    tally.add(heads);
    int[] number = {88100};
    maker.addLogs(
        tally,
        9,
        cells -> {
          cells.add(String.valueOf(++number[0]));
          cells.add("");
          return cells;
        });
    return tally;
  }

  private static MadeTally numbered(TallyMaker maker) {
    MadeTally tally = with(maker, "numbered empty rows", heads -> heads);
    for (int i = 0; i < 12; i++) {
      tally.add(List.of(String.valueOf(900 + i), "", "", "", "", ""));
    }
    return tally;
  }

  /** The unit row stands again under the headings, with other units. */
  private static MadeTally oneAnother(TallyMaker maker) {
    MadeTally tally = MadeTally.of("headings again with other units");
    String first = maker.tape().metric() ? "m" : "ft";
    tally.add(List.of("Log", "Length", "Butt", "Mid", "Tip", "Species"));
    String unit = "(" + maker.tape().diameter + ")";
    tally.add(List.of("", "(" + maker.tape().length + ")", unit, unit, unit, ""));
    maker.addLogs(tally, 6, cells -> cells);
    TallyMaker other = new TallyMaker(maker.random().nextLong());
    String units = "(" + other.tape().diameter + ")";
    if (maker.random().nextBoolean()) {
      tally.add(List.of("Log", "Length", "Butt", "Mid", "Tip", "Species"));
    }
    tally.add(List.of("", "(" + other.tape().length + ")", units, units, units, ""));
    List<Steps> logs = other.yard().logs(5);
    for (int i = 0; i < logs.size(); i++) {
      int row = tally.add(other.cells("Z" + i, logs.get(i)));
      tally.truth().add(other.yard().truth(row, "Z" + i, logs.get(i)));
    }
    return new MadeTally(tally.kind() + " " + first, tally.rows(), tally.truth());
  }
}
