/**
 * The program and its libraries as one module, for the app image: Java keeps its classes wherever
 * it lies.
 *
 * <p>Java 17 ties an archive of classes to the path of the jar they came from, so an image that had
 * been moved, as all are that are handed on, took 0.65 s of processor time more. Classes in Java's
 * own file of modules are kept in its own archive wherever it lies. The module has all the
 * libraries in it and is open, so the plain jar knows nothing of it; what a library looks for by
 * {@code META-INF/services} has to stand here too. An image made by JDK 25 keeps an AOT cache
 * besides; it is 199 MB instead of 156, and no quicker (see src/site/measured.md).
 */
open module roundbook {
  requires java.desktop;
  requires java.logging;
  requires java.naming;
  requires java.security.jgss;
  requires java.sql;
  requires java.xml;
  requires java.xml.crypto;
  // Hears a second interrupt.
  requires jdk.unsupported;
  // Reads old encodings of text tables.
  requires jdk.charsets;

  uses org.apache.logging.log4j.spi.Provider;
  uses org.apache.logging.log4j.util.PropertySource;
  uses org.apache.poi.ss.usermodel.WorkbookProvider;
  uses org.slf4j.spi.SLF4JServiceProvider;
  uses ch.qos.logback.classic.spi.Configurator;

  provides org.apache.logging.log4j.spi.Provider with
      org.apache.logging.slf4j.SLF4JProvider;
  provides org.apache.logging.log4j.util.PropertySource with
      org.apache.logging.log4j.util.EnvironmentPropertySource,
      org.apache.logging.log4j.util.SystemPropertiesPropertySource;
  provides org.apache.poi.ss.usermodel.WorkbookProvider with
      org.apache.poi.hssf.usermodel.HSSFWorkbookFactory,
      org.apache.poi.xssf.usermodel.XSSFWorkbookFactory;
  provides org.slf4j.spi.SLF4JServiceProvider with
      ch.qos.logback.classic.spi.LogbackServiceProvider;
  provides ch.qos.logback.classic.spi.Configurator with
      roundbook.app.LogSetup;
}
