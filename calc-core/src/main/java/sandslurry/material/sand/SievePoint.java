package sandslurry.material.sand;

/**
 * One line of a sieve analysis. It holds what was typed; {@link Gradation#problems} judges it.
 *
 * @param sizeM opening of the sieve [m]
 * @param fractionPassing mass that passes the sieve over all mass, 0 to 1
 */
public record SievePoint(double sizeM, double fractionPassing) {}
