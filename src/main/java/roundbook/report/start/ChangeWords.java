package roundbook.report.start;

import java.util.ArrayList;
import java.util.List;
import roundbook.job.BuildRules;
import roundbook.plan.Quantity;
import roundbook.problem.Phrase;
import roundbook.replan.Change;
import roundbook.replan.Difference;
import roundbook.replan.Difference.DifferenceKind;
import roundbook.replan.GapCheck;
import roundbook.replan.Replan;
import roundbook.report.words.QuantityWords;
import roundbook.report.words.Words;
import roundbook.units.Length;
import roundbook.units.LengthFormat;

/**
 * Changes between two revisions in the words of a language.
 *
 * @param words the words
 */
public record ChangeWords(Words words) {
  /** Returns every difference as a line, and last the pages to print again. */
  public List<String> lines(List<Difference> differences, List<String> pages) {
    List<String> lines = new ArrayList<>();
    for (Difference each : differences) {
      lines.add(what(each) + ": " + value(each, each.was()) + " → " + value(each, each.now()));
    }
    if (differences.isEmpty()) {
      lines.add(words.text("changes.none"));
    }
    lines.add(pages(pages));
    return lines;
  }

  /** Returns the changes of logs with their reasons, and the pages to print again. */
  public List<String> brief(Replan replan, List<String> pages) {
    List<String> lines = new ArrayList<>();
    for (Change each : replan.changes()) {
      lines.add(
          words.text(
              "changes.line",
              each.place().round(),
              each.place().wall(),
              orDash(each.was()),
              now(each),
              why(each)));
    }
    lines.addAll(gaps(replan));
    lines.add(pages(pages));
    return lines;
  }

  /** Returns each gap that was measured beside the plan's, and what they come to. */
  private List<String> gaps(Replan replan) {
    GapCheck gaps = replan.gaps();
    BuildRules rules = replan.plan().job().rules();
    LengthFormat formats = LengthFormat.forJob(rules.unit(), rules.printStep());
    List<String> lines = new ArrayList<>();
    for (GapCheck.Line line : gaps.lines()) {
      lines.add(
          words.text(
              "gaps.line",
              line.spot().wall(),
              line.spot().below() + 1,
              line.spot().below(),
              words.text("wall.chart." + line.spot().at().word()),
              formats.mark(line.predicted()),
              formats.mark(line.measured()),
              signed(formats, line.difference())));
    }
    if (!lines.isEmpty()) {
      String key = gaps.asPlanned() ? "gaps.sum.as_planned" : "gaps.sum";
      String spread = formats.mark(gaps.spread());
      String unit = rules.unit().symbol();
      lines.add(words.text(key, lines.size(), signed(formats, gaps.mean()), spread, unit));
    }
    return lines;
  }

  private static String signed(LengthFormat formats, Length length) {
    String mark = formats.mark(length);
    return mark.startsWith("-") || mark.startsWith("−") || mark.equals("0") ? mark : "+" + mark;
  }

  /** Returns which pages must be printed again, as a sentence. */
  String pages(List<String> names) {
    return names.isEmpty()
        ? words.text("changes.pages.none")
        : words.text("changes.pages", String.join(", ", names));
  }

  /** Returns what is different. */
  String what(Difference each) {
    if (each.kind() == DifferenceKind.QUANTITY) {
      Phrase phrase = Phrase.parse(each.place()).orElseThrow();
      return new QuantityWords(words).item(new Quantity("", phrase.key(), 0, "", phrase.values()));
    }
    return words.text("changes.kind." + ChangesTable.key(each.kind()), each.round(), each.place());
  }

  /** Returns what a difference was or is. */
  String value(Difference each, String value) {
    return each.kind() == DifferenceKind.QUANTITY ? words.number(orDash(value)) : orDash(value);
  }

  /** Returns a value, or a dash where there is none. */
  String orDash(String value) {
    if (value.equals("+")) {
      return words.text("changes.there");
    }
    return value.isEmpty() ? words.text("changes.none_before") : value;
  }

  /** Returns the log that a place has now. */
  String now(Change change) {
    return change.sameLog() ? words.text("changes.same_log", change.now()) : orDash(change.now());
  }

  /** Returns the reason of a change. */
  String why(Change change) {
    return words.text("changes.why." + ChangesTable.key(change.why()), change.about());
  }
}
