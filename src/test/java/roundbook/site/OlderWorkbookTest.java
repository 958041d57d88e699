package roundbook.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import roundbook.job.Setting;
import roundbook.plan.Plan;
import roundbook.plan.PlanFixtures;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.problem.Severity;

/** A workbook that was written before some settings came is read with their defaults. */
class OlderWorkbookTest {
  private static final Plan PLAN = PlanFixtures.inches().plan(2);

  /** The settings of an order, and those of heights, came after the first crew workbooks. */
  @Test
  void settingsThatCameLaterHaveTheirDefaults() {
    CrewWorkbook old = CrewWorkbook.of(PLAN);
    List<Setting> later = List.of(Setting.HOLD_HEIGHT, Setting.MID_BOTTOM, Setting.BED_LENGTH);
    for (Setting setting : later) {
      old.never(setting.label());
      old.never("Was_" + setting.label());
      old.never("Set_by_" + setting.label());
    }
    Read<SiteReport> read = old.read();
    SiteReport report = read.value().orElseThrow(() -> new AssertionError(read.problems()));
    assertEquals("no", report.job().rules().text(Setting.HOLD_HEIGHT));
    assertEquals(13.5, report.job().rules().length(Setting.MID_BOTTOM).inches());
    List<Problem> said =
        read.problems().stream().filter(each -> each.code() == ProblemCode.CELL_LOST).toList();
    assertEquals(1, said.size(), said.toString());
    assertEquals(Severity.INFO, said.get(0).severity());
    assertTrue(said.toString().contains("Hold_height Mid_bottom Bed_length"), said.toString());
  }

  @Test
  void aSettingWhoseCellWasDeletedIsMissed() {
    Read<SiteReport> read = CrewWorkbook.of(PLAN).lose("Was_Overhang").read();
    assertTrue(read.value().isEmpty());
    assertTrue(read.problems().toString().contains("Was_Overhang"), read.problems().toString());
  }
}
