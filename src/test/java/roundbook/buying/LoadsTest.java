package roundbook.buying;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import roundbook.job.BuildRules;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Setting;
import roundbook.plan.Jobs;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.units.Length;

/** Loads packed by hand, and limits that no load may pass. */
class LoadsTest {
  /** By hand: the 24 ft logs of 700 and 500 and the 18 ft of 600, 400, 300, 200; 1200 a load. */
  @Test
  void theLongestGoFirstEachIntoTheFirstLoadThatHoldsIt() {
    Loads loads =
        Loads.packed(
            List.of(
                item(2, 18, 200),
                item(2, 18, 600),
                item(1, 24, 500),
                item(2, 18, 400),
                item(1, 24, 700),
                item(2, 18, 300)),
            1200);
    assertEquals(
        "700+500, 600+400+200, 300",
        loads.loads().stream().map(LoadsTest::weights).collect(Collectors.joining(", ")));
    assertEquals(Length.ofInches(288), loads.loads().get(0).longest());
  }

  @Test
  void noLoadIsOverItsLimitAndNoLogIsLeft() {
    Order order = OrderTest.narrow();
    for (int most = 1500; most < 20_000; most += 500) {
      Loads loads = Loads.packed(order.items(), most);
      int limit = most;
      assertTrue(loads.loads().stream().allMatch(load -> load.pounds() <= limit), "" + most);
      assertEquals(38, loads.loads().stream().mapToInt(load -> load.items().size()).sum());
      double all = order.items().stream().mapToDouble(Loads.Item::pounds).sum();
      assertTrue(loads.loads().size() >= Math.ceil(all / most));
    }
  }

  @Test
  void whatATrailerDoesNotHoldIsSaidByLineAndTheRestIsPacked() {
    assertEquals(lines(line -> true), left("500", 400));
    assertEquals(lines(line -> line.lengths().delivered().inches() > 280), left("10000", 280));
    assertEquals(lines(line -> false), left("10000", 400));
  }

  @Test
  void kilogramsAreOfAMetricJob() {
    BuildRules rules =
        Jobs.rules(true).with(Setting.LOAD_MOST, new BigDecimal("1000"), Origin.OPTION);
    List<Loads.Item> items = IntStream.range(0, 4).mapToObj(i -> item(1, 20, 1102)).toList();
    Optional<Loads> loads = Loads.of(rules, items).value().orElseThrow();
    assertEquals(2, loads.orElseThrow().loads().size());
  }

  @Test
  void withoutALimitNoLoadIsPlanned() {
    assertTrue(Loads.of(Jobs.rules(false), List.of()).value().orElseThrow().isEmpty());
  }

  private static List<Integer> lines(Predicate<Line> which) {
    return OrderTest.narrow().lines().stream().filter(which).map(Line::number).toList();
  }

  /** Returns the lines that lie on no load; every other one lies on some. */
  private static List<Integer> left(String most, int bed) {
    BuildRules rules =
        Jobs.rules(false)
            .with(Setting.LOAD_MOST, new BigDecimal(most), Origin.OPTION)
            .with(Setting.BED_LENGTH, Length.ofInches(bed), Origin.OPTION);
    Read<Optional<Loads>> read = Loads.of(rules, OrderTest.narrow().items());
    Optional<Loads> loads = read.value().orElseThrow();
    List<Integer> left =
        OrderTest.narrow().lines().stream()
            .map(Line::number)
            .filter(line -> loads.filter(all -> all.carries(line)).isEmpty())
            .toList();
    assertEquals(left.size(), read.problems().size());
    assertTrue(read.problems().stream().allMatch(each -> each.code() == ProblemCode.LOAD_SMALL));
    return left;
  }

  private static Loads.Item item(int line, int feet, double pounds) {
    return new Loads.Item(line, Length.ofInches(12 * feet), pounds);
  }

  private static String weights(Loads.Load load) {
    return load.items().stream()
        .flatMap(item -> Stream.of(String.valueOf(Math.round(item.pounds()))))
        .collect(Collectors.joining("+"));
  }
}
