package sandslurry.units;

import javax.measure.Quantity;

/** Energy spent per mass moved; SI unit joule per kilogram. */
public interface SpecificEnergy extends Quantity<SpecificEnergy> {}
