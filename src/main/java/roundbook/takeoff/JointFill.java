package roundbook.takeoff;

import java.util.OptionalDouble;
import roundbook.stack.Joint;

/**
 * The filling of one joint, from shoulder to shoulder less the openings that cut it.
 *
 * @param joint the joint
 * @param run length on one face, inches
 * @param faceLeast least height at the faces, inches
 * @param faceMost greatest height at the faces, inches
 * @param section mean section from face to face, square inches
 * @param faceArea area to be seen on one face, square inches
 * @param gapVolume volume from face to face, cubic inches
 * @param stripVolume volume of the chinking on both faces, cubic inches
 * @param widest greatest height at the chinking's depth, inches
 * @param backer stock diameter of the backer, in the job's unit (mm or in); none is thick enough
 *     where it is empty
 */
public record JointFill(
    Joint joint,
    double run,
    double faceLeast,
    double faceMost,
    double section,
    double faceArea,
    double gapVolume,
    double stripVolume,
    double widest,
    OptionalDouble backer) {}
