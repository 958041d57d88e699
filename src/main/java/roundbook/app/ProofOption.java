package roundbook.app;

import java.io.File;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** How long to reckon by how much another choice of logs could be better: {@code --prove 5min}. */
final class ProofOption {
  /** How long where no time is told. */
  static final Duration USUAL = Duration.ofMinutes(1);

  private static final String NAME = "--prove";
  private static final Pattern TIME = Pattern.compile("([1-9]\\d{0,4})(s|min)");

  /** Another option, or a path: with folders or with an ending. */
  private static final Pattern NO_TIME = Pattern.compile("-\\D.*|.*[/\\\\].*|.*\\.[A-Za-z]+");

  @Option(
      names = NAME,
      paramLabel = "TIME",
      converter = TimeOf.class,
      description =
          "Reckon how much better a choice could be, for a minute or a time such as 90s or 5min.")
  private Duration time;

  Optional<Duration> time() {
    return Optional.ofNullable(time);
  }

  /** Returns arguments in which the option has its time, also where none was told. */
  static String[] timed(String[] args) {
    List<String> all = new ArrayList<>();
    for (int i = 0; i < args.length; i++) {
      if (!args[i].equals(NAME)) {
        all.add(args[i]);
      } else if (i + 1 < args.length && isMeantAsTime(args[i + 1])) {
        all.add(NAME + "=" + args[++i]);
      } else {
        all.add(NAME + "=" + USUAL.toSeconds() + "s");
      }
    }
    return all.toArray(String[]::new);
  }

  /**
   * Returns whether a word is a time or a slip in writing one, rather than what is to be planned.
   */
  private static boolean isMeantAsTime(String word) {
    return TIME.matcher(word).matches()
        || !NO_TIME.matcher(word).matches() && !new File(word).exists();
  }

  /** Reads seconds or minutes. */
  static final class TimeOf implements ITypeConverter<Duration> {
    @Override
    public Duration convert(String text) {
      Matcher time = TIME.matcher(text);
      if (!time.matches()) {
        throw new TypeConversionException("'" + text + "' is no time: write 90s or 5min");
      }
      long count = Long.parseLong(time.group(1));
      return time.group(2).equals("s") ? Duration.ofSeconds(count) : Duration.ofMinutes(count);
    }
  }
}
