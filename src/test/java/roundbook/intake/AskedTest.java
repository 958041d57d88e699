package roundbook.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class AskedTest {
  /** What a workbook was made from is known by this text, so it may not change from run to run. */
  @Test
  void settingsKeepTheirOrder() {
    List<String> labels = List.of("Overhang", "Seed", "Chinking_gap", "Paper", "Log_thickness");
    Map<String, String> settings = new LinkedHashMap<>();
    labels.forEach(label -> settings.put(label, "1"));
    Asked asked =
        new Asked(
            settings,
            settings,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of());
    assertEquals(labels, List.copyOf(asked.settings().keySet()));
    assertEquals(labels, List.copyOf(asked.typed().keySet()));
  }
}
