package sandslurry.report.section;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import sandslurry.assessment.stop.StopResult;
import sandslurry.assessment.stop.StopResult.FlushFlow;
import sandslurry.assessment.stop.StopResult.Plug;
import sandslurry.assessment.stop.StopResult.StoppedRun;
import sandslurry.report.block.Page;
import sandslurry.report.figure.Column;
import sandslurry.units.Kind;

/** What the report says of the line stopped full of sand, its restart and its flush. */
record StopSection(StopResult stop, boolean driven, Page page) implements SectionWriter {
  private void plugs(StopResult stop) {
    if (stop.plugs().isEmpty()) {
      return;
    }
    tableOf(
        stop.plugs(),
        List.of(
            Column.text("plug at", Plug::where),
            Column.of("length", Kind.LENGTH, plug -> plug.parts().lengthM()),
            Column.of("weight", Kind.PRESSURE, plug -> plug.parts().climbingWeightPa()),
            Column.of("friction, liquid seeping", Kind.PRESSURE, Plug::frictionPa),
            Column.text(
                "wedged",
                plug ->
                    plug.wedgedPa().isPresent()
                        ? number(Kind.PRESSURE, plug.wedgedPa().getAsDouble())
                        : "beyond any pump"),
            Column.maybe("longest moved", Kind.LENGTH, Plug::movableM)));
    paragraph(
        "The weight is that along climbing pipe and part of the static pressure. Seeping: liquid"
            + " drags every grain. Wedged: pushed like a cork, the face sealed by fibre, which"
            + " grows exponentially with length over bore. The last column is the longest plug that"
            + " the pressure left for it moves like a cork. Never clear a plug by more pressure,"
            + " nor by compressed air.");
  }

  void write() {
    heading(1, "Stop and restart");
    alikeOf(
        stop.runs(),
        List.of(
            Column.text("run", StoppedRun::run),
            Column.of("bed depth", Kind.DEPTH, StoppedRun::bedM),
            Column.of("of the cross-section", Kind.PERCENT, StoppedRun::bedShare),
            Column.maybe("settling time", Kind.TIME, StoppedRun::settlingS),
            Column.text("slope [deg]", run -> degrees(run.slopeRad())),
            Column.text("bed slides at [deg]", run -> degrees(run.slideRad())),
            Column.of("plug", Kind.LENGTH, StoppedRun::plugM),
            Column.maybe("clearing velocity of water", Kind.VELOCITY, StoppedRun::clearingMps)));
    paragraph(
        "Stopped full the line holds "
            + show(Kind.MASS, stop.filling().sandKg())
            + " of sand in "
            + show(Kind.VOLUME, stop.filling().volumeM3())
            + ". The restart pressure is "
            + show(Kind.PRESSURE, stop.leastPa())
            + (stop.mostPa().isPresent()
                ? " to " + show(Kind.PRESSURE, stop.mostPa().getAsDouble())
                : " or, if a plug wedges, more than any pump has,")
            + " with the static head"
            + (driven
                ? "; the pump gives "
                    + show(Kind.PRESSURE, stop.pressures().availablePa())
                    + " at zero flow"
                : "")
            + "."
            + (stop.flush().isPresent()
                ? ""
                : " No flow rate of water was found that flushes it clean."));
    paragraph(
        "The time is that of the finest sand; a dash means that the yield stress may hold it. Of"
            + " the restart pressure the low end is a balance of forces, the high end twice its"
            + " sum. No measurements with manure were found."
            + (stop.flush().isPresent() ? " The answer says what a flush needs." : ""));
    plugs(stop);
    stop.supply().ifPresent(this::supply);
  }

  private void supply(FlushFlow supply) {
    paragraph(
        "The flush supply gives "
            + (supply.solved()
                ? flow(supply.cleanM3ps())
                    + " into the clean line, at the least "
                    + flow(supply.loadedM3ps())
                    + " while water pushes out what is in the line, and "
                    + flow(supply.bedM3ps())
                    + " over the settled bed."
                : flow(supply.cleanM3ps()) + ", as given."));
  }

  private String flow(OptionalDouble flow) {
    return flow.isPresent() ? show(Kind.FLOW, flow.getAsDouble()) : "nothing";
  }

  private static String degrees(double angleRad) {
    return String.format(Locale.ROOT, "%.0f", Math.toDegrees(angleRad));
  }
}
