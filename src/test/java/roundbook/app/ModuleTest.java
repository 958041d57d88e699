package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The module of the app image offers what the libraries' jars offer by their service files. */
class ModuleTest {
  private static final Pattern USES = Pattern.compile("uses ([\\w.]+);");
  private static String module;

  @BeforeAll
  static void read() throws IOException {
    module = Files.readString(Path.of("src/module/module-info.java"));
  }

  @Test
  void everyServiceHasAllItsProviders() throws IOException {
    List<String> services = USES.matcher(module).results().map(found -> found.group(1)).toList();
    assertFalse(services.isEmpty());
    for (String service : services) {
      assertEquals(inServiceFiles(service), inModule(service), service);
    }
  }

  private static Set<String> inModule(String service) {
    Pattern provides = Pattern.compile("provides " + Pattern.quote(service) + "\\s+with([^;]*);");
    Set<String> providers = new TreeSet<>();
    for (MatchResult found : provides.matcher(module).results().toList()) {
      providers.addAll(List.of(found.group(1).strip().split("\\s*,\\s*")));
    }
    return providers;
  }

  private static Set<String> inServiceFiles(String service) throws IOException {
    ClassLoader loader = ModuleTest.class.getClassLoader();
    Set<String> providers = new TreeSet<>();
    for (URL file : Collections.list(loader.getResources("META-INF/services/" + service))) {
      try (var in = file.openStream()) {
        new String(in.readAllBytes(), StandardCharsets.UTF_8)
            .lines()
            .map(line -> line.replaceFirst("#.*", "").strip())
            .filter(line -> !line.isEmpty())
            .forEach(providers::add);
      }
    }
    return providers;
  }
}
