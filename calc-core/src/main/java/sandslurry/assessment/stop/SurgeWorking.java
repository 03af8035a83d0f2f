package sandslurry.assessment.stop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sandslurry.design.Design;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Equations;
import sandslurry.fact.step.Trace;
import sandslurry.pipe.catalogue.StandardPipe;
import sandslurry.pipe.surge.GassyLiquid;
import sandslurry.pipe.surge.Joukowsky1898;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** The working behind the surge in each run. */
public final class SurgeWorking {
  private static final Equations EQUATIONS = Equations.of(SurgeWorking.class);
  private static final Equation RETURN = EQUATIONS.of("return", Kind.TIME);
  private static final Equation SLOW = EQUATIONS.of("slow", Kind.PRESSURE);
  private static final Equation GREATEST = EQUATIONS.of("greatest", Kind.PRESSURE);
  private static final Equation FALL =
      EQUATIONS.of("fall", Kind.PRESSURE, Joukowsky1898.SURGE.source());
  private static final Equation LOWEST = EQUATIONS.of("lowest", Kind.PRESSURE);
  private static final Equation STOP_TIME = EQUATIONS.of("stop-time", Kind.TIME);

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
