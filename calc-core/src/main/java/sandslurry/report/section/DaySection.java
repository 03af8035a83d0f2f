package sandslurry.report.section;

import java.util.List;
import java.util.OptionalDouble;
import sandslurry.assessment.service.ServiceResult.Day;
import sandslurry.pump.rotodynamic.WearIndex;
import sandslurry.report.block.Block;
import sandslurry.report.figure.Column;
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

  private static OptionalDouble energyJ(Day day) {
    return day.energyJ() > 0 ? OptionalDouble.of(day.energyJ()) : OptionalDouble.empty();
  }

  private void days(List<Day> days) {
    if (days.isEmpty()) {
      return;
    }
    heading(1, "A day of pumping");
    tableOf(
        days,
        List.of(
            Column.text("state", Day::state),
            Column.of("running", Kind.HOURS, Day::runningS),
            Column.maybe("starts", Kind.STARTS, Day::startsPs),
            Column.maybe("energy", Kind.ENERGY, DaySection::energyJ),
            Column.of("sand", Kind.MASS, Day::sandKg),
            Column.maybe("energy per sand", Kind.SPECIFIC_ENERGY, Day::energyPerSandJpKg),
            Column.text("wear", day -> StatesSection.wear(day.wear()))));
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
