package sandslurry.report.section;

import java.util.ArrayList;
import java.util.List;
import sandslurry.assessment.service.ServiceResult.Day;
import sandslurry.pump.rotodynamic.WearIndex;
import sandslurry.report.block.Block;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** What the report says of a day of pumping. */
final class DaySection extends SectionWriter {
  private DaySection(UnitSystem units) {
    super(units);
  }

  static List<Block> of(UnitSystem units, List<Day> days) {
    DaySection section = new DaySection(units);
    section.days(days);
    return section.blocks();
  }

  private void days(List<Day> days) {
    if (days.isEmpty()) {
      return;
    }
    heading(1, "A day of pumping");
    List<List<String>> rows = new ArrayList<>();
    for (Day day : days) {
      rows.add(
          List.of(
              day.state(),
              number(Kind.HOURS, day.runningS()),
              number(Kind.STARTS, day.startsPs()),
              day.energyJ() > 0 ? number(Kind.ENERGY, day.energyJ()) : "-",
              number(Kind.MASS, day.sandKg()),
              number(Kind.SPECIFIC_ENERGY, day.energyPerSandJpKg()),
              StatesSection.wear(day.wear())));
    }
    table(
        List.of(
            "state",
            head("running", Kind.HOURS),
            head("starts", Kind.STARTS),
            head("energy", Kind.ENERGY),
            head("sand", Kind.MASS),
            head("energy per sand", Kind.SPECIFIC_ENERGY),
            "wear"),
        rows);
    paragraph(
        "Each state is taken to last all day. Starts are the most frequent, at an inflow of half"
            + " the flow rate. Wear is relative to the design flow rate, to the power "
            + WearIndex.LOW_POWER
            + " to "
            + WearIndex.HIGH_POWER
            + " ("
            + WearIndex.SOURCE
            + ").");
  }
}
