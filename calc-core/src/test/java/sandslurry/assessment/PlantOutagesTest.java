package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantResult.Outage;
import sandslurry.golden.Shipped;
import sandslurry.plant.Plant;
import sandslurry.plant.network.Mode;
import sandslurry.plant.schedule.Day;
import sandslurry.plant.schedule.DaySchedule;

class PlantOutagesTest {
  private static PlantResult dairy() throws Exception {
    return Shipped.assessment("closed-loop-dairy.json").plant().orElseThrow();
  }

  private static Outage out(PlantResult result, String what) {
    return result.outages().stream()
        .filter(one -> one.what().equals(what))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aWeekWithoutAPressThickensTheLiquorAndOneWithoutTheRecycleCostsSand() throws Exception {
    PlantResult result = dairy();
    Outage whole = result.outages().get(0);
    // Nothing is out: the week is that of the last day by schedule.
    double lastDay = result.accounts().orElseThrow().basis().compared().get(0).byDay();
    assertThat(whole.recovery()).isCloseTo(lastDay, within(1e-3));
    Outage press = out(result, "Fibre separator");
    assertThat(press.liquor()).isGreaterThan(1.5 * whole.liquor());
    assertThat(press.recovery()).isLessThan(whole.recovery() - 0.01);
    // Nothing comes to a press whose pump stands: the same week.
    assertThat(out(result, "to press").recovery()).isCloseTo(press.recovery(), within(1e-3));
    // Without the recycle the box is fed undiluted manure; the water of the loop goes to storage.
    Outage recycle = out(result, "recycle");
    assertThat(recycle.recovery()).isLessThan(whole.recovery() - 0.05);
    assertThat(recycle.storedM3()).isGreaterThan(whole.storedM3());
    // 580 stalls' worth of sand a day fills 4.3 m3 of box in about half a day.
    assertThat(out(result, "Box").fullAfterS().orElseThrow()).isBetween(8 * 3600.0, 24 * 3600.0);
    assertThat(result.outages()).allMatch(Outage::comesBack);
  }

  @Test
  void daysAfterADayAreTheDaysThatWouldHaveFollowed() {
    Mode mode =
        new Mode("all day", Plant.loop(Plant.sandOnly(0.3, 0.8, 1), 0.6, 0.002), Plant.feeds(0.2));
    DaySchedule schedule = Plant.always(mode);
    List<Day> all = schedule.run(6, Map.of(), 3600).days();
    List<Day> later = schedule.after(schedule.run(2, Map.of(), 3600).days().get(1), 4, 3600).days();
    for (String stream : List.of("surplus", "sand", "cake")) {
      double expected = all.get(5).meanFlows().get(stream).solidsKgps();
      assertThat(later.get(3).meanFlows().get(stream).solidsKgps())
          .isCloseTo(expected, within(1e-5 * Math.max(expected, 1e-9) + 1e-12));
    }
  }
}
