package sandslurry.material.liquid;

/**
 * One reading of a viscometer. The values are not checked here, so that a whole table with several
 * slips can be told of all of them at once: see {@link RheogramFit#problems}.
 *
 * @param shearRatePs shear rate at the measuring surface [1/s]
 * @param shearStressPa shear stress there [Pa]
 */
public record ViscometerReading(double shearRatePs, double shearStressPa) {}
