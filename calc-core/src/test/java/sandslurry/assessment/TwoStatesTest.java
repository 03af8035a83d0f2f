package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import sandslurry.assessment.plant.PlantClogging;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.PlantResult.Clogged;
import sandslurry.design.document.DesignDocument;
import sandslurry.plant.ManureSolids;
import sandslurry.plant.Plant;
import sandslurry.plant.Stream;
import sandslurry.plant.network.Mode;
import sandslurry.plant.network.Pit;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.schedule.Day;

/** A loop that stays thin from water and thick from thick liquor. */
class TwoStatesTest {
  /** No water comes, the press catches nothing: only what settles in the boxes thins the liquor. */
  private static DesignDocument loop() throws Exception {
    return DesignDocument.load(Path.of("..", "docs", "examples", "closed-loop-dairy.json"))
        .without("/plant/modes")
        .with("/plant/pens/0/water", "0 m3/d")
        .with("/plant/pens/1/water", "0 m3/d")
        .with("/plant/pens/2/water", "0 m3/d")
        .with("/plant/waters/0/flow", "0 m3/h")
        .with("/plant/waters/1/flow", "0 m3/h")
        .with("/plant/units/0/rinsePoreVolumes", "0")
        .with("/plant/units/0/length", "95 m")
        .with("/plant/units/2/body", "250 mm")
        .with("/plant/units/2/apex", "50 mm")
        .with("/plant/units/3/length", "40 m")
        .with("/plant/units/4/pumps/0/flow", "120 m3/h")
        .with("/plant/units/5/fibreCapture", "0 %")
        .with("/plant/units/5/finesCapture", "0 %")
        .with("/plant/units/6/pumps/0/flow", "68 m3/h");
  }

  private static double after(PlantModel model, Mode mode, double solids) {
    Stream liquor = Stream.liquor(model.constituents(), 1, solids, ManureSolids.FRESH);
    Map<String, Stream> filling = new LinkedHashMap<>();
    mode.network().units().stream()
        .filter(Pit.class::isInstance)
        .forEach(pit -> filling.put(pit.name(), liquor));
    List<Day> days = Plant.always(mode).run(100, filling, 7200).days();
    return model.totals().capture(days.get(days.size() - 1).meanFlows());
  }

  @Test
  void bothStatesAreFoundAndDaysFromEitherSideOfTheTipLeadToThem() throws Exception {
    PlantModel model = new PlantModel(loop().read().design().orElseThrow());
    Mode mode = model.mode(model.spec().modes().get(0), PlantModel.Case.BASE);
    SteadyBalance thin = (SteadyBalance) mode.steadyState();
    Clogged two = new PlantClogging(model).of(mode, thin).orElseThrow();
    assertThat(two.thin().sandCapture()).isGreaterThan(0.5);
    assertThat(two.thick().orElseThrow().sandCapture()).isLessThan(0.3);
    assertThat(two.tips()).isBetween(two.thin().solved(), two.startSolids());

    assertThat(after(model, mode, 0)).isCloseTo(two.thin().sandCapture(), within(0.005));
    for (double below : new double[] {0.004, 0.008, 0.01}) {
      assertThat(after(model, mode, two.tips() - below))
          .as("it comes back slowly")
          .isCloseTo(two.thin().sandCapture(), within(0.02));
    }
    // Not from the start itself, which lies so near the tip that the step of time decides.
    assertThat(after(model, mode, two.startSolids() + 0.01))
        .isCloseTo(two.thick().orElseThrow().sandCapture(), within(0.005));
  }
}
