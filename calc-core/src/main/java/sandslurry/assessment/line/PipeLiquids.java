package sandslurry.assessment.line;

import java.util.HashMap;
import java.util.Map;
import sandslurry.material.liquid.Rheology;
import sandslurry.pipe.Bore;
import sandslurry.transport.friction.NonNewtonianFriction;

/**
 * Liquids in pipes, each made once: where flow turns turbulent is solved for when one is made, and
 * a curve asks for the same liquid in the same pipe many times.
 */
final class PipeLiquids {
  private final Map<Key, NonNewtonianFriction> made = new HashMap<>();

  private record Key(Rheology rheology, double densityKgM3, Bore bore) {}

  NonNewtonianFriction of(Rheology rheology, double densityKgM3, Bore bore) {
    return made.computeIfAbsent(
        new Key(rheology, densityKgM3, bore),
        key -> new NonNewtonianFriction(rheology, densityKgM3, bore));
  }
}
