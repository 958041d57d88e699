package roundbook.crosscut;

import java.util.Map;
import roundbook.job.AsBuilt.Held;
import roundbook.job.AsBuilt.Place;
import roundbook.job.Job;

/**
 * A job whose stems are cut.
 *
 * @param job the job, with the pieces of its stems as logs
 * @param places the piece or log that each place was cut for; empty where nothing was cut
 */
public record CutJob(Job job, Map<Place, Held> places) {
  /** Copies the map. */
  public CutJob {
    places = Map.copyOf(places);
  }

  /** Returns whether anything was cut. */
  public boolean isCut() {
    return !places.isEmpty();
  }
}
