package roundbook.report.form;

import java.util.List;
import roundbook.job.Price;
import roundbook.job.Setting;

/** What a job workbook is filled with; a row of texts for each row of a sheet. */
interface JobFilling {
  /** Returns the text of a setting; empty takes the default. */
  String setting(Setting setting);

  /** Returns the four walls. */
  List<List<String>> walls();

  /** Returns the rows of the tally. */
  List<List<String>> logs();

  /** Returns the openings. */
  List<List<String>> openings();

  /** Returns the places that are settled. */
  List<List<String>> pins();

  /** Returns the logs for other places than the walls. */
  default List<List<String>> others() {
    return List.of();
  }

  /** Returns what yards ask for logs; nobody but the builder knows. */
  default List<Price> prices() {
    return List.of();
  }
}
