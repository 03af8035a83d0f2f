package sandslurry.plant.profile;

import java.util.OptionalDouble;

/**
 * The static head of a stream that is pumped from one unit to another.
 *
 * @param stream its name
 * @param from the unit that it is pumped from
 * @param to the unit that it is pumped to
 * @param leastM static head with the water highest in the one and lowest in the other [m]
 * @param mostM static head with the water lowest in the one and highest in the other [m]
 * @param ofLineM static head that the line of the stream is judged with, at its lowest source
 *     level; empty when the stream has no line [m]
 */
public record Lift(
    String stream, String from, String to, double leastM, double mostM, OptionalDouble ofLineM) {}
