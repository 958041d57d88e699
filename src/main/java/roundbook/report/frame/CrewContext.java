package roundbook.report.frame;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import roundbook.job.BuildRules;
import roundbook.job.Setting;
import roundbook.page.PageSetup;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.PageSetup.Paper;
import roundbook.plan.EndPhrase;
import roundbook.plan.PiecePlan;
import roundbook.plan.Plan;
import roundbook.problem.Problem;
import roundbook.problem.words.Sentences;
import roundbook.replan.Replan;
import roundbook.report.words.Words;
import roundbook.units.LengthFormat;

/**
 * What every sheet of a crew workbook is made from.
 *
 * @param plan the plan
 * @param found problems found while the tally was read, in file order; the plan has its own
 * @param issue which revision this is and where it comes from
 * @param words the words of the workbook's language
 * @param replan what changed since the revision before; empty in a first plan
 * @param typed problems of what was typed into the revision before
 * @param changed the pages that print otherwise than in the revision before
 * @param sets what is printed for whom; empty until every other sheet is made
 */
public record CrewContext(
    Plan plan,
    List<Problem> found,
    Issue issue,
    Words words,
    Optional<Replan> replan,
    List<Problem> typed,
    List<String> changed,
    List<PrintSet> sets) {
  /** What a text has behind its key that tells of more walls than four. */
  private static final String MORE = ".more_walls";

  /** Copies the lists. */
  public CrewContext {
    found = List.copyOf(found);
    typed = List.copyOf(typed);
    changed = List.copyOf(changed);
    sets = List.copyOf(sets);
  }

  /** A context of a first plan. */
  public CrewContext(Plan plan, List<Problem> found, Issue issue, Words words) {
    this(plan, found, issue, words, Optional.empty(), List.of(), List.of(), List.of());
  }

  /**
   * Returns this context with what changed since the revision before.
   *
   * @param made the plan anew
   * @param pages the pages that print otherwise than in the revision before
   */
  public CrewContext following(Replan made, List<String> pages) {
    return new CrewContext(plan, found, issue, words, Optional.of(made), typed, pages, sets);
  }

  /** Returns this context with problems of what was typed. */
  public CrewContext saying(List<Problem> said) {
    return new CrewContext(plan, found, issue, words, replan, said, changed, sets);
  }

  /** Returns this context with what is printed for whom. */
  public CrewContext printing(List<PrintSet> known) {
    return new CrewContext(plan, found, issue, words, replan, typed, changed, known);
  }

  /** Returns this context as another revision. */
  public CrewContext as(int revision) {
    Issue other = new Issue(revision, issue.input(), issue.version(), issue.pictures());
    return new CrewContext(plan, found, other, words, replan, typed, changed, sets);
  }

  /**
   * Which revision of the workbook this is and where it comes from.
   *
   * @param revision counted from 1
   * @param input the name of the file that was read, without its folder
   * @param version the program's version
   * @param pictures whether drawings are made
   */
  public record Issue(int revision, String input, String version, boolean pictures) {}

  /** Returns the context of a plan in the language that its job asks for. */
  public static CrewContext of(Plan plan, List<Problem> found, Issue issue) {
    String language = plan.job().rules().text(Setting.LANGUAGE);
    return new CrewContext(plan, found, issue, Words.of(language));
  }

  /** Returns the rules of the job. */
  public BuildRules rules() {
    return plan.job().rules();
  }

  /** Returns every problem: of the tally in file order, of what was typed, then of the plan. */
  public List<Problem> problems() {
    return Stream.of(found, typed, plan.problems()).flatMap(List::stream).distinct().toList();
  }

  /** Returns the job's name, or the input's name without its ending when it has none. */
  public String jobName() {
    String name = rules().text(Setting.JOB_NAME).strip();
    return name.isEmpty() ? issue.input().replaceFirst("\\.[A-Za-z0-9]{1,5}$", "") : name;
  }

  /**
   * Returns a text of the workbook's language with values filled in: that for houses of more than
   * one ring of walls, where there is one for them.
   */
  public String text(String key, Object... values) {
    String more = key + MORE;
    return words.text(hasMoreWalls() && words.has(more) ? more : key, values);
  }

  private boolean hasMoreWalls() {
    return plan.job().building().walls().size() > 4;
  }

  /** Returns how lengths are printed: in the unit of the job, decimals as its language has them. */
  public LengthFormat formats() {
    return LengthFormat.forJob(rules().unit(), rules().printStep())
        .withDecimalMark(words.decimalMark());
  }

  /** Returns the run of the slope as it is printed, such as {@code 3}. */
  public String slopeRun() {
    return words.number(rules().slope().run().stripTrailingZeros().toPlainString());
  }

  /** Returns the sentences of problems in the workbook's language. */
  public Sentences sentences() {
    return Sentences.of(words.language());
  }

  /** Returns what is wrong, in the workbook's language. */
  public String message(Problem problem) {
    return sentences().message(problem);
  }

  /** Returns what the person can do about a problem, in the workbook's language. */
  public String remedy(Problem problem) {
    return sentences().remedy(problem);
  }

  /** Returns what is told of a placed log's end, in the workbook's language. */
  public String end(PiecePlan piece, boolean butt) {
    return EndPhrase.of(piece, butt, formats()).in(sentences());
  }

  /** Returns the revision as it stands on every page, such as {@code REV 2}. */
  public String revision() {
    return words.text("page.revision", issue.revision());
  }

  /** Returns the job's paper. */
  public Paper paper() {
    String paper = rules().text(Setting.PAPER).toLowerCase(Locale.ROOT);
    return paper.equals("a4") ? Paper.A4 : Paper.LETTER;
  }

  /** Returns an upright page one page wide, with job and revision over it and pages under it. */
  public PageSetup page(PageKind kind) {
    return PageSetup.of(kind, paper())
        .header(shortened(jobName()), "", revision())
        .footer(
            shortened(words.text("page.from", issue.input())),
            rules().text(Setting.JOB_DATE),
            words.text("page.count", "{page}", "{pages}"));
  }

  private static String shortened(String text) {
    return text.length() <= 60 ? text : text.substring(0, 59) + "…";
  }
}
