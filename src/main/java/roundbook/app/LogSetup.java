package roundbook.app;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.encoder.PatternLayoutEncoder;
import ch.qos.logback.classic.spi.Configurator;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.FileAppender;
import ch.qos.logback.core.spi.ContextAwareBase;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.slf4j.helpers.NOP_FallbackServiceProvider;

/**
 * Sets the log up in code, which starts faster than a configuration file.
 *
 * <p>Nothing is logged unless a log file is asked for; what a person must see goes to the streams
 * of the run, never through the log.
 */
public final class LogSetup extends ContextAwareBase implements Configurator {
  private static final String NO_LOG = NOP_FallbackServiceProvider.class.getName();

  @Override
  public ExecutionStatus configure(LoggerContext context) {
    context.getLogger(Logger.ROOT_LOGGER_NAME).setLevel(Level.OFF);
    return ExecutionStatus.DO_NOT_INVOKE_NEXT_IF_ANY;
  }

  /**
   * Leaves Logback alone where no log was asked for: setting it up takes as long as starting Java.
   *
   * @param args the command line
   */
  static void choose(String[] args) {
    boolean maybe = Stream.of(args).anyMatch(arg -> arg.startsWith("--log") || arg.startsWith("@"));
    if (!maybe) {
      System.setProperty("slf4j.internal.verbosity", "WARN");
      System.setProperty(LoggerFactory.PROVIDER_PROPERTY_KEY, NO_LOG);
    }
  }

  /** Starts logging to a file; what stands in it already is kept. */
  static void toFile(Path file) {
    LoggerContext context = (LoggerContext) LoggerFactory.getILoggerFactory();
    PatternLayoutEncoder encoder = new PatternLayoutEncoder();
    encoder.setContext(context);
    encoder.setPattern("%d %-5level %logger{20} %msg%n");
    encoder.start();
    FileAppender<ILoggingEvent> appender = new FileAppender<>();
    appender.setContext(context);
    appender.setFile(file.toString());
    appender.setEncoder(encoder);
    appender.start();
    context.getLogger(Logger.ROOT_LOGGER_NAME).setLevel(Level.WARN);
    context.getLogger("roundbook").setLevel(Level.INFO);
    context.getLogger(Logger.ROOT_LOGGER_NAME).addAppender(appender);
  }
}
