package sandslurry.units;

import javax.measure.Quantity;

/** Velocity gradient in a sheared liquid; SI unit one per second. */
public interface ShearRate extends Quantity<ShearRate> {}
