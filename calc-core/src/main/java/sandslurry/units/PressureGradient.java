package sandslurry.units;

import javax.measure.Quantity;

/** Pressure lost per length of pipe; SI unit pascal per metre. */
public interface PressureGradient extends Quantity<PressureGradient> {}
