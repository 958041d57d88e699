package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.balance.Effort;
import roundbook.intake.Asked;
import roundbook.intake.JobReader;
import roundbook.job.Job;
import roundbook.job.Setting;
import roundbook.page.Book;
import roundbook.plan.Plan;
import roundbook.plan.PlanFixtures;
import roundbook.plan.Planner;
import roundbook.report.book.CrewBook;
import roundbook.report.book.PrintedPages;
import roundbook.report.frame.CrewContext;
import roundbook.rounds.BalancedChooser;
import roundbook.sheet.PrintedSize;

/** Nothing on any page of a crew workbook is printed too small to be read in bad light. */
class PrintedSizeTest {
  /** Body text of print for readers of all ages is 8 to 12 points: common practice. */
  private static final double LEAST_POINTS = 8;

  private static final int MOST_PAGES = 49;

  @ParameterizedTest
  @CsvSource({
    "hill-cabin, letter, en",
    "hill-cabin, a4, de",
    "metric-hut, a4, en",
    "metric-hut, letter, de"
  })
  void samplesAreLegible(String sample, String paper, String language) {
    Plan plan = sample(sample, Map.of("Paper", paper, "Language", language));
    check(plan);
    int pages =
        book(plan).sheets().stream()
            .filter(sheet -> !sheet.view().hidden())
            .mapToInt(sheet -> PrintedPages.of(sheet).count())
            .sum();
    assertTrue(pages <= MOST_PAGES, "pages of a cabin of eight rounds: " + pages);
  }

  @Test
  void longAndShortJobsAreLegible() {
    for (int rounds : new int[] {1, 4, 14}) {
      for (String language : List.of("en", "de")) {
        check(fixture(PlanFixtures.inches(), rounds, language));
        check(fixture(PlanFixtures.metric(), rounds, language));
      }
    }
  }

  private static Book book(Plan plan) {
    CrewContext.Issue issue = new CrewContext.Issue(1, "cabin.xlsx", "0.0-test", true);
    return CrewBook.of(CrewContext.of(plan, List.of(), issue));
  }

  private static void check(Plan plan) {
    assertEquals("", String.join("\n", PrintedSize.under(LEAST_POINTS, book(plan).sheets())));
  }

  private static Plan fixture(PlanFixtures job, int rounds, String language) {
    return job.set(Setting.LANGUAGE, language).withOpenings().plan(rounds);
  }

  private static Plan sample(String name, Map<String, String> settings) {
    Asked asked =
        new Asked(settings, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    var tables = Sources.read(Path.of("samples", name + ".xlsx")).value().orElseThrow();
    Job job = JobReader.read(tables, asked).value().orElseThrow().job().orElseThrow();
    return new Planner(new BalancedChooser()).plan(job, Effort.usual(1).withMoves(200));
  }
}
