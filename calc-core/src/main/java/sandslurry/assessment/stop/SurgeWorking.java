package sandslurry.assessment.stop;

import static sandslurry.fact.step.Equation.DEFINITION;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sandslurry.design.Design;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.pipe.catalogue.StandardPipe;
import sandslurry.pipe.surge.GassyLiquid;
import sandslurry.pipe.surge.Joukowsky1898;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** The working behind the surge in each run. */
public final class SurgeWorking {
  private static final String MICHAUD = "Michaud 1878, from memory, unverified; an even stop";
  private static final Equation RETURN =
      Equation.of(
          "t_r",
          "time in which the wave runs along the line and back",
          "2 L/a",
          Kind.TIME,
          DEFINITION,
          "L m, a m/s");
  private static final Equation SLOW =
      Equation.of(
          "dp_T",
          "surge of a stop in the time given",
          "dp for T <= t_r; else dp t_r/T",
          Kind.PRESSURE,
          MICHAUD,
          "dp Pa, T s, t_r s");
  private static final Equation GREATEST =
      Equation.of(
          "p",
          "greatest pressure with it",
          "p_working + dp_T",
          Kind.PRESSURE,
          DEFINITION,
          "p_working Pa, dp_T Pa");
  private static final Equation FALL =
      Equation.search(
          "dp_low",
          "fall of pressure where and when it becomes lowest",
          "the surge in proportion to the velocity, over both ends of the run and the flow rates"
              + " of the design",
          Kind.PRESSURE,
          Joukowsky1898.SURGE.source(),
          "dp_T Pa");
  private static final Equation LOWEST =
      Equation.of(
          "p_low",
          "minimum gauge pressure: the wave takes off what it adds, down to the vapour pressure",
          "max(p_steady - dp_low, p_v)",
          Kind.PRESSURE,
          DEFINITION,
          "p_steady Pa, dp_low Pa, p_v Pa");
  private static final Equation STOP_TIME =
      Equation.of(
          "T_s",
          "time of an even stop that keeps the rating",
          "2 rho_m L dV / (p_rating - p_working)",
          Kind.TIME,
          MICHAUD,
          "rho_m kg/m3, L m, dV m/s, p_rating Pa, p_working Pa");

  private SurgeWorking() {}

  /**
   * Keeps the steps of all runs, that of the greatest pressure first.
   *
   * @param trace what keeps the steps
   * @param design the design
   * @param surges surge in each run
   */
  public static void tell(Trace trace, Design design, List<SurgeResult> surges) {
    double column =
        design.route().stream()
            .flatMap(route -> route.runs().stream())
            .mapToDouble(run -> Measure.LENGTH.si(run.length()))
            .sum();
    List<SurgeResult> greatestFirst = new ArrayList<>(surges);
    greatestFirst.sort(
        Comparator.comparingDouble((SurgeResult s) -> -Math.rint(s.workingPa() + s.judgedPa())));
    for (SurgeResult surge : greatestFirst) {
      trace.begin("surge", surge.run());
      tell(trace, design.route().orElseThrow().run(surge.run()), column, surge);
    }
  }

  private static void tell(Trace trace, RunSpec run, double column, SurgeResult surge) {
    StandardPipe pipe = run.pipe().orElseThrow();
    double rho = surge.densityKgM3();
    trace.step(
        Joukowsky1898.WAVE,
        surge.waveMps(),
        rho,
        GassyLiquid.WATER_MODULUS_PA,
        pipe.largestBoreM(),
        pipe.system().material().shortTermModulusPa(),
        pipe.leastWallM());
    trace.step(Joukowsky1898.SURGE, surge.surgePa(), rho, surge.waveMps(), surge.velocityMps());
    surge
        .slow()
        .ifPresent(
            slow -> {
              trace.step(RETURN, slow.returnS(), column, surge.waveMps());
              trace.step(SLOW, slow.surgePa(), surge.surgePa(), slow.timeS(), slow.returnS());
            });
    double working = surge.workingPa();
    trace.step(GREATEST, working + surge.judgedPa(), working, surge.judgedPa());
    SurgeResult.LowWave low = surge.lowest();
    double fall = trace.step(FALL, low.steadyPa() - low.lowestPa(), surge.judgedPa());
    trace.step(LOWEST, low.minimumPa(), low.steadyPa(), fall, low.vapourPa());
    if (surge.stopS().isPresent()) {
      trace.step(
          STOP_TIME,
          surge.stopS().getAsDouble(),
          rho,
          column,
          surge.velocityMps(),
          surge.ratingPa().orElseThrow(),
          working);
    }
  }
}
