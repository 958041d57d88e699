package roundbook;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/** Uses of the JDK that make a result depend on when, where or how often it runs. */
enum Habits {
  /** Asking what time it is. */
  CLOCK(
      "ask a clock",
      Habits::asksAClock,
      Set.of("System.currentTimeMillis", "System.nanoTime", "Calendar.getInstance")),

  /** Chance without a seed. */
  CHANCE(
      "use chance without a seed",
      Habits::drawsLots,
      Set.of("Math.random", "StrictMath.random", "UUID.randomUUID")),

  /** Rules of the reader's country or machine instead of fixed ones. */
  SURROUNDINGS(
      "depend on the machine's own language, zone, encoding or settings",
      Habits::looksAround,
      Set.of(
          "Locale.getDefault",
          "ZoneId.systemDefault",
          "TimeZone.getDefault",
          "Charset.defaultCharset",
          "System.getProperty",
          "System.getProperties",
          "System.getenv",
          "System.lineSeparator",
          "String.formatted",
          "MessageFormat.format")),

  /** The three streams of the process. */
  STREAMS("use the standard streams", Habits::usesStreams, Set.of()),

  /** Functions whose last digit the JDK leaves open. */
  LAST_DIGIT(
      "use Math where only StrictMath always gives the same last digit",
      Habits::leavesLastDigitOpen,
      Set.of());

  private static final Set<String> OPEN =
      Set.of(
          "sin", "cos", "tan", "asin", "acos", "atan", "atan2", "sinh", "cosh", "tanh", "hypot",
          "exp", "expm1", "log", "log10", "log1p", "pow", "cbrt");

  private final String words;
  private final Predicate<AccessTarget> test;
  private final Set<String> names;

  Habits(String words, Predicate<AccessTarget> test, Set<String> names) {
    this.words = words;
    this.test = test;
    this.names = names;
  }

  /** Returns what an access must be like to show the habit. */
  DescribedPredicate<JavaAccess<?>> access() {
    return DescribedPredicate.describe(words, access -> shows(access.getTarget()));
  }

  private boolean shows(AccessTarget target) {
    return names.contains(spelled(target)) || test.test(target);
  }

  private static boolean asksAClock(AccessTarget target) {
    JavaClass owner = target.getOwner();
    return owner.getPackageName().startsWith("java.time") && target.getName().equals("now")
        || owner.getName().equals("java.time.Clock") && !target.getName().equals("fixed")
        || spelled(target).equals("Date.<init>") && parameters(target).isEmpty();
  }

  private static boolean drawsLots(AccessTarget target) {
    List<String> given = parameters(target);
    String name = spelled(target);
    return given.isEmpty()
            && (name.equals("Random.<init>") || name.equals("SplittableRandom.<init>"))
        || name.startsWith("ThreadLocalRandom.")
        || name.startsWith("SecureRandom.")
        || name.equals("Collections.shuffle") && given.size() == 1;
  }

  private static boolean looksAround(AccessTarget target) {
    List<String> given = parameters(target);
    boolean withLocale = given.contains("java.util.Locale");
    return switch (spelled(target)) {
      case "String.format", "Formatter.<init>", "MessageFormat.<init>" -> !withLocale;
      case "DecimalFormat.<init>" -> given.size() < 2;
      case "String.toLowerCase", "String.toUpperCase", "DecimalFormatSymbols.getInstance" ->
          given.isEmpty();
      default -> spelled(target).matches("NumberFormat\\.get\\w*Instance") && !withLocale;
    };
  }

  private static boolean usesStreams(AccessTarget target) {
    return spelled(target).matches("System\\.(in|out|err)")
        || target.getName().equals("printStackTrace") && parameters(target).isEmpty();
  }

  private static boolean leavesLastDigitOpen(AccessTarget target) {
    return target.getOwner().getName().equals("java.lang.Math") && OPEN.contains(target.getName());
  }

  private static String spelled(AccessTarget target) {
    return target.getOwner().getSimpleName() + "." + target.getName();
  }

  private static List<String> parameters(AccessTarget target) {
    return target instanceof CodeUnitAccessTarget unit
        ? unit.getRawParameterTypes().stream().map(JavaClass::getName).toList()
        : List.of();
  }
}
