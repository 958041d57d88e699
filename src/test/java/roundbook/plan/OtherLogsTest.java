package roundbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.OtherLog;
import roundbook.plan.OtherLogs.Found;
import roundbook.plan.Plan.LogUse;
import roundbook.plan.Plan.Use;
import roundbook.problem.CellRef;
import roundbook.units.Length;

/** Logs for plates, joists and the like, from those that no wall has a place for. */
class OtherLogsTest {
  private static final Plan PLAN = PlanFixtures.inches().plan(2);

  @Test
  void onlyLogsWithoutAPlaceAreTakenEachOnceAndAllServe() {
    OtherLog joist = other("joist", 2, 192, 11, 9);
    OtherLog post = other("post", 3, 96, 0, 0);
    OtherLogs found = of(post, joist);
    assertEquals(5, found.taken().size());
    assertEquals(List.of(), found.lacking());
    Set<String> tags = new HashSet<>();
    for (Found each : found.taken()) {
      assertTrue(tags.add(each.log().tag() + each.from().inches()), "taken once");
      Use use =
          PLAN.uses().stream()
              .filter(one -> one.log().tag().equals(each.log().tag()))
              .map(LogUse::use)
              .findFirst()
              .orElseThrow();
      assertTrue(use == Use.SPARE || use == Use.LEFT_OUT);
      assertEquals(use == Use.SPARE, each.spare());
      Length least = each.other().length().plus(Length.ofInches(4));
      Length middle = each.from().plus(least.dividedBy(2));
      Length end = each.from().plus(least);
      assertTrue(!each.log().length().isLessThan(end), "squared at both ends");
      assertTrue(!each.log().profile().at(middle).isLessThan(each.other().mid()));
      assertTrue(!each.log().profile().at(end).isLessThan(each.other().tip()));
      assertTrue(!each.over().isLessThan(Length.ofInches(4)), "what squaring takes");
      assertTrue(each.pounds() > 0);
    }
    assertEquals("joist", found.taken().get(0).other().name(), "the longest are looked for first");
  }

  @Test
  void aBetterLogThatWasNotTakenIsASpareOrLeavesMoreOver() {
    OtherLogs found = of(other("post", 3, 96, 0, 0));
    Set<String> taken = new HashSet<>();
    found.taken().forEach(each -> taken.add(each.log().tag()));
    Found last = found.taken().get(2);
    for (LogUse use : PLAN.uses()) {
      boolean free = use.use() == Use.SPARE || use.use() == Use.LEFT_OUT;
      boolean open = use.log().traits().keep() == Log.Keep.ANY && !use.log().traits().skip();
      if (free && open && !taken.contains(use.log().tag())) {
        boolean worse = use.use() == Use.SPARE && !last.spare();
        boolean longer = !use.log().length().isLessThan(last.log().length());
        assertTrue(worse || longer || use.log().length().inches() < 100, use.log().tag());
      }
    }
  }

  @Test
  void whatNoLogServesForIsOrderedByTheYardsLengths() {
    OtherLogs found = of(other("ridge", 2, 480, 12, 10), other("tie", 1, 216, 40, 0));
    assertEquals(List.of(), found.taken());
    assertEquals(2, found.lacking().size());
    OtherLogs.Lack ridge = found.lacking().get(0);
    assertEquals("ridge", ridge.other().name());
    assertEquals(2, ridge.count());
    assertEquals(Length.ofInches(484), ridge.lengths().least());
    // 484 less 6 over is 478: the next even length is 40 ft, cut to 40 ft 6 in.
    assertEquals(Length.ofInches(480), ridge.lengths().ask());
    assertEquals(Length.ofInches(486), ridge.lengths().delivered());
  }

  @Test
  void aBentLogServesOnlyWhereItMay() {
    OtherLog any = other("post", 100, 96, 0, 0);
    OtherLog straight =
        new OtherLog(
            "post",
            100,
            Length.ofInches(96),
            Length.ZERO,
            Length.ZERO,
            Optional.of(Length.ZERO),
            "",
            CellRef.ofFile(""));
    long bent =
        of(any).taken().stream().filter(each -> !each.log().traits().sweep().isZero()).count();
    assertEquals(of(any).taken().size() - bent, of(straight).taken().size());
    assertTrue(
        of(straight).taken().stream().allMatch(each -> each.log().traits().sweep().isZero()));
  }

  /** Posts so short that a log holds two: pieces never overlap, and fewer logs are touched. */
  @Test
  void theRestOfALogServesForAnother() {
    List<Found> posts = of(other("post", 11, 96, 0, 0)).taken();
    assertEquals(11, posts.size());
    Set<String> logs = new HashSet<>();
    posts.forEach(each -> logs.add(each.log().tag()));
    assertTrue(logs.size() < 11, logs.size() + " logs");
    for (Found one : posts) {
      Length end = one.from().plus(one.other().length()).plus(one.over());
      for (Found two : posts) {
        boolean after =
            one.log().tag().equals(two.log().tag()) && two.from().isMoreThan(one.from());
        assertTrue(!after || !end.isMoreThan(two.from()), one.log().tag());
      }
    }
    Found rest = posts.stream().filter(each -> !each.from().isZero()).findFirst().orElseThrow();
    Found whole =
        posts.stream()
            .filter(each -> each.from().isZero() && each.log().tag().equals(rest.log().tag()))
            .findFirst()
            .orElseThrow();
    assertTrue(rest.pounds() < whole.pounds() && rest.pounds() > whole.pounds() / 4);
  }

  /**
   * A cone's frustum: its centroid from the larger end is h (R² + 2 R r + 3 r²) / 4 (R² + R r +
   * r²).
   */
  @Test
  void theBalancePointIsThatOfTheSolid() {
    Found each = of(other("post", 1, 96, 0, 0)).taken().get(0);
    double h = each.log().length().inches();
    double large = each.log().butt().inches();
    double small = each.log().tip().inches();
    double cone =
        h
            * (large * large + 2 * large * small + 3 * small * small)
            / (4 * (large * large + large * small + small * small));
    double middle = each.log().mid().inches() - (large + small) / 2;
    double tolerance = Math.abs(middle) < 0.01 ? 0.05 : h / 40;
    assertEquals(cone, each.balance().inches(), tolerance);
  }

  private static OtherLogs of(OtherLog... others) {
    Job job = PLAN.job().withOthers(List.of(others));
    return OtherLogs.of(Planner.of(job, PLAN.choice()));
  }

  private static OtherLog other(String name, int count, int length, int mid, int tip) {
    return new OtherLog(
        name,
        count,
        Length.ofInches(length),
        Length.ofInches(mid),
        Length.ofInches(tip),
        Optional.empty(),
        "",
        CellRef.ofFile(""));
  }
}
