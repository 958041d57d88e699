/** The program and its libraries as one module, for the app image: Java keeps its classes wherever it lies. */
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
