package sandslurry.assessment.stop;

import static sandslurry.correlation.Working.DEFINITION;
import static sandslurry.correlation.Working.in;

import java.util.List;
import sandslurry.correlation.Working;
import sandslurry.design.Design;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.fact.step.Step;
import sandslurry.pipe.surge.GassyLiquid;
import sandslurry.pipe.surge.Joukowsky1898;
import sandslurry.units.Kind;

/** The working behind the surge in a run. */
public final class SurgeWorking {
  private SurgeWorking() {}

  public static List<Step> steps(Design design, SurgeResult surge) {
    Working w = new Working("surge in " + surge.run());
    RunSpec run = design.route().orElseThrow().run(surge.run());
    w.step(
        "dp",
        "surge of a sudden stop",
        new Joukowsky1898(),
        Kind.PRESSURE,
        surge.surgePa(),
        in("a", Kind.VELOCITY, surge.waveMps()),
        in("dV", Kind.VELOCITY, surge.velocityMps()),
        in("rho", Kind.DENSITY, surge.surgePa() / (surge.waveMps() * surge.velocityMps())),
        in("K", Kind.PRESSURE, GassyLiquid.WATER_MODULUS_PA),
        in("D", Kind.BORE, run.pipe().orElseThrow().largestBoreM()),
        in("t", Kind.BORE, run.pipe().orElseThrow().leastWallM()),
        in("E", Kind.PRESSURE, run.pipe().orElseThrow().system().material().shortTermModulusPa()));
    w.step(
        "p",
        "greatest pressure with it",
        "p = p_working + dp",
        Kind.PRESSURE,
        surge.workingPa() + surge.judgedPa(),
        DEFINITION,
        in("p_working", Kind.PRESSURE, surge.workingPa()),
        in("dp", Kind.PRESSURE, surge.judgedPa()));
    surge
        .slow()
        .ifPresent(
            slow ->
                w.step(
                    "dp_T",
                    "surge of a stop in the time given",
                    "dp_T = dp for T <= 2 L/a, else dp (2 L/a) / T",
                    Kind.PRESSURE,
                    slow.surgePa(),
                    "Michaud 1878, from memory, unverified; an even stop",
                    in("T", Kind.TIME, slow.timeS()),
                    in("2L/a", Kind.TIME, slow.returnS())));
    w.step(
        "p_least",
        "minimum pressure: the wave takes off what it adds, down to the vapour pressure",
        "p_least = max(p_steady - dp, p_vapour)",
        Kind.PRESSURE,
        surge.lowest().minimumPa(),
        "Joukowsky 1898",
        in("p_steady", Kind.PRESSURE, surge.lowest().steadyPa()),
        in("dp", Kind.PRESSURE, surge.lowest().steadyPa() - surge.lowest().lowestPa()),
        in("p_vapour", Kind.PRESSURE, surge.lowest().vapourPa()));
    if (surge.stopS().isPresent()) {
      w.step(
          "T",
          "even time of stopping that keeps the rating",
          "T = 2 rho L dV / (p_rating - p_working)",
          Kind.TIME,
          surge.stopS().getAsDouble(),
          "Michaud 1878",
          in("dV", Kind.VELOCITY, surge.velocityMps()),
          in("p_rating", Kind.PRESSURE, surge.ratingPa().orElseThrow()),
          in("p_working", Kind.PRESSURE, surge.workingPa()));
    }
    return w.steps();
  }
}
