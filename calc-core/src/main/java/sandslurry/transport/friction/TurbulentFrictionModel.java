package sandslurry.transport.friction;

import sandslurry.correlation.Correlation;
import sandslurry.correlation.Estimate;
import sandslurry.material.liquid.Rheology;
import sandslurry.pipe.Bore;

/** Friction of a non-Newtonian liquid in turbulent flow through a full pipe. */
public interface TurbulentFrictionModel extends Correlation {
  /**
   * Shear stress at the wall.
   *
   * @param rheology the liquid, with a flow index below 2
   * @param densityKgM3 its density [kg/m3]
   * @param bore the pipe
   * @param velocityMps mean velocity, positive [m/s]
   * @return wall stress [Pa], and what lay outside the published range
   */
  Estimate wallStressPa(Rheology rheology, double densityKgM3, Bore bore, double velocityMps);
}
