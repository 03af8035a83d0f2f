package sandslurry.assessment.stop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sandslurry.design.Design;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.fact.step.Sheet;
import sandslurry.fact.step.Trace;
import sandslurry.pipe.catalogue.StandardPipe;
import sandslurry.pipe.surge.Joukowsky1898;

/** The working behind the surge in each run. */
public final class SurgeWorking {

  private SurgeWorking() {}

  /**
   * Keeps the steps of all runs, that of the greatest pressure first.
   *
   * @param trace what keeps the steps
   * @param design the design
   * @param surges surge in each run
   */
  public static void steps(Trace trace, Design design, List<SurgeResult> surges) {
    Sheet sheet = Sheet.of(SurgeWorking.class, trace);
    double column =
        design.line().stream()
            .flatMap(line -> line.route().runs().stream())
            .mapToDouble(run -> run.lengthM())
            .sum();
    List<SurgeResult> greatestFirst = new ArrayList<>(surges);
    greatestFirst.sort(
        Comparator.comparingDouble((SurgeResult s) -> -Math.rint(s.workingPa() + s.judgedPa())));
    for (SurgeResult surge : greatestFirst) {
      sheet.begin("surge", surge.run());
      steps(sheet, design.oneLine().route().run(surge.run()), column, surge);
    }
  }

  private static void steps(Sheet sheet, RunSpec run, double column, SurgeResult surge) {
    StandardPipe pipe = run.pipe().orElseThrow();
    double rho = surge.densityKgM3();
    sheet.step(
        Joukowsky1898.WAVE,
        surge.waveMps(),
        rho,
        Joukowsky1898.WATER_MODULUS_PA,
        pipe.largestBoreM(),
        pipe.system().material().shortTermModulusPa(),
        pipe.leastWallM());
    sheet.step(Joukowsky1898.SURGE, surge.surgePa(), rho, surge.waveMps(), surge.velocityMps());
    surge
        .slow()
        .ifPresent(
            slow -> {
              sheet.step("return", slow.returnS(), column, surge.waveMps());
              sheet.step("slow", slow.surgePa(), surge.surgePa(), slow.timeS(), slow.returnS());
            });
    double working = surge.workingPa();
    sheet.step("greatest", working + surge.judgedPa(), working, surge.judgedPa());
    SurgeResult.LowWave low = surge.lowest();
    double fall =
        sheet
            .by(Joukowsky1898.SURGE.source())
            .step("fall", low.steadyPa() - low.lowestPa(), surge.judgedPa());
    sheet.step("lowest", low.minimumPa(), low.steadyPa(), fall, low.vapourPa());
    if (surge.stopS().isPresent()) {
      sheet.step(
          "stop-time",
          surge.stopS().getAsDouble(),
          rho,
          column,
          surge.velocityMps(),
          surge.ratingPa().orElseThrow(),
          working);
    }
  }
}
