package roundbook.app;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import roundbook.app.MadeTally.True;
import roundbook.app.MadeTally.Use;
import roundbook.app.YardLogs.Steps;
import roundbook.app.YardLogs.Tape;

/**
 * Makes tallies as yards send them, each of one kind, with what is true of them.
 *
 * <p>The words of headings stand here once more, from memory of what people write, and not from the
 * reader's own lists.
 */
final class TallyMaker {
  private static final String[][] PEOPLE = {
    {"Log|Length|Butt|Mid|Tip|Species", "pine,fir,spruce"},
    {"Tag|Len|Butt dia|Mid dia|Top dia|Species", "pine,fir"},
    {"Log No.|Log length|Large end diameter|Middle diameter|Small end diameter|Sp.", "pine,fir"},
    {"Log ID|Length incl. trim|LED|Diameter at mid-length|SED|Species", "pine,fir"},
    {"Stamm-Nr.|Länge|Durchmesser Stockende|Mittendurchmesser|Zopfdurchmesser|Holzart", "Fichte"},
    {"Nr.|Stammlänge|Stockstärke|Mittenstärke|Zopfstärke|Baumart", "Fichte,Kiefer"},
    {"Grume|Longueur|Diamètre au gros bout|Diamètre au milieu|Diamètre au fin bout|Essence", "pin"},
    {"N°|Longueur|Ø le plus gros|Ø médian|Ø petit bout|Essence", "épicéa"},
    {"Stock|Längd|Rotmått|Mittmått|Toppmått|Trädslag", "gran,tall"},
    {"Stocknr|Längd|Rotdiameter|Mittdiameter|Toppdiameter|Trädslag", "gran,tall"},
    {"Tukki|Pituus|Tyvihalkaisija|Keskihalkaisija|Latvahalkaisija|Puulaji", "mänty"},
    {"Tukin nro|Pituus|Tyviläpimitta|Keskiläpimitta|Latvaläpimitta|Puulaji", "kuusi"},
    {"Troza|Longitud|Diámetro mayor|Diámetro medio|Diámetro menor|Especie", "pino"},
    {"Troza|Long.|Ø base|Ø centro|Ø punta|Especie", "pino"},
    {"Stokknr|Lengde|Rotdiameter|Midtdiameter|Toppdiameter|Treslag", "gran,furu"},
    {"Kævle|Længde|Diameter rod|Diameter midt|Diameter top|Træart", "gran"},
    {"Stamnummer|Lengte|Diameter voet|Diameter midden|Diameter top|Houtsoort", "grenen"},
    {"Tronco|Lunghezza|Diametro base|Diametro a metà|Diametro punta|Specie", "abete"},
    {"Tora|Comprimento|Diâmetro maior|Diâmetro médio|Diâmetro menor|Espécie", "pinho"},
    {"Kłoda|Długość|Średnica odziomka|Średnica środkowa|Średnica wierzchołka|Gatunek", "sosna"},
    {"Kláda|Délka|Průměr oddenku|Průměr středu|Průměr čepu|Dřevina", "smrk"},
    {"Palk|Pikkus|Läbimõõt tüvi|Läbimõõt keskelt|Läbimõõt latv|Puuliik", "kuusk"},
    {"Baļķis|Garums|Caurmērs resgalī|Caurmērs vidū|Caurmērs tievgalī|Suga", "egle"},
    {"Бревно|Длина|Диаметр комля|Диаметр середины|Диаметр вершины|Порода", "сосна"},
  };

  private final SplittableRandom random;
  private final Tape tape;
  private final YardLogs yard;
  private final String[] words;
  private final String[] species;

  TallyMaker(long seed) {
    random = new SplittableRandom(seed);
    tape = any(Tape.values());
    yard = new YardLogs(tape, random);
    String[] people = any(PEOPLE);
    words = people[0].split("\\|");
    species = people[1].split(",");
  }

  @SafeVarargs
  final <T> T any(T... choices) {
    return choices[random.nextInt(choices.length)];
  }

  SplittableRandom random() {
    return random;
  }

  Tape tape() {
    return tape;
  }

  YardLogs yard() {
    return yard;
  }

  String[] words() {
    return words;
  }

  /** Writes the unit of a heading as people do. */
  String united(String word, String unit) {
    return switch (random.nextInt(4)) {
      case 0 -> word + " " + unit;
      case 1 -> word + ", " + unit;
      case 2 -> word + " [" + unit + "]";
      default -> word + " (" + unit + ")";
    };
  }

  List<String> headings() {
    return new ArrayList<>(
        List.of(
            words[0],
            united(words[1], tape.length),
            united(words[2], tape.diameter),
            united(words[3], tape.diameter),
            united(words[4], tape.diameter),
            words[5]));
  }

  List<String> cells(String tag, Steps log) {
    return new ArrayList<>(
        List.of(
            tag,
            yard.length(log),
            yard.diameter(log.butt()),
            yard.diameter(log.mid()),
            yard.diameter(log.tip()),
            any(species)));
  }

  /** Adds logs under headings of their own, all columns in one order for all. */
  void addLogs(MadeTally tally, int count, java.util.function.UnaryOperator<List<String>> change) {
    List<Steps> logs = yard.logs(count);
    boolean letters = random.nextBoolean();
    for (int i = 0; i < count; i++) {
      String tag = (letters ? "K" : "") + (300 + tally.truth().size());
      int row = tally.add(change.apply(cells(tag, logs.get(i))));
      tally.truth().add(yard.truth(row, tag, logs.get(i)));
    }
  }

  /** Makes a plain tally with columns in any order. */
  MadeTally plain(String kind) {
    MadeTally tally = MadeTally.of(kind);
    List<Integer> order = new ArrayList<>(Arrays.asList(0, 1, 2, 3, 4, 5));
    for (int i = order.size() - 1; i > 0; i--) {
      java.util.Collections.swap(order, i, random.nextInt(i + 1));
    }
    List<String> headings = headings();
    tally.add(order.stream().map(headings::get).toList());
    addLogs(tally, 8 + random.nextInt(8), cells -> order.stream().map(cells::get).toList());
    return tally;
  }

  /** Makes a tally with more columns before the others or after them. */
  MadeTally beside(String kind, boolean first, String heading, String... values) {
    MadeTally tally = MadeTally.of(kind + ": " + heading);
    tally.add(with(headings(), first, heading));
    addLogs(tally, 9, cells -> with(cells, first, any(values)));
    return tally;
  }

  static List<String> with(List<String> cells, boolean first, String more) {
    List<String> all = new ArrayList<>(cells);
    all.add(first ? 0 : all.size(), more);
    return all;
  }

  /** Returns the same tally, each log to be asked about. */
  static MadeTally asked(MadeTally tally) {
    List<True> truth = tally.truth().stream().map(each -> each.as(Use.ASK)).toList();
    return new MadeTally(tally.kind(), tally.rows(), new ArrayList<>(truth));
  }
}
