package sandslurry.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.PulsationResult;
import sandslurry.assessment.PulsationResult.Pulse;
import sandslurry.assessment.ServiceResult;
import sandslurry.assessment.ServiceResult.Day;
import sandslurry.assessment.ServiceResult.DutyRow;
import sandslurry.assessment.ServiceResult.GravityRun;
import sandslurry.assessment.ServiceResult.Screw;
import sandslurry.assessment.StateResult;
import sandslurry.assessment.StateResult.Point;
import sandslurry.assessment.StateResult.PumpPoint;
import sandslurry.assessment.StateResult.SuctionPoint;
import sandslurry.assessment.StopResult;
import sandslurry.assessment.StopResult.FlushFlow;
import sandslurry.assessment.StopResult.Plug;
import sandslurry.assessment.StopResult.StoppedRun;
import sandslurry.assessment.SurgeResult;
import sandslurry.pump.WearIndex;
import sandslurry.units.Kind;

/** What the report says of a line in service beside its design state. */
final class ServiceSection extends SectionWriter {
  private final Assessment assessment;
  private final ServiceResult result;

  private ServiceSection(Assessment assessment) {
    super(assessment.design().units());
    this.assessment = assessment;
    this.result = assessment.service();
  }

  static List<Block> of(Assessment assessment) {
    ServiceSection section = new ServiceSection(assessment);
    section.states();
    section.dutyBand();
    section.pumps();
    section.result.pulsation().ifPresent(section::pulsation);
    section.surges();
    section.result.stop().ifPresent(section::stop);
    section.days();
    section.result.screw().ifPresent(section::screw);
    section.result.gravityRun().ifPresent(section::gravityRun);
    return section.blocks();
  }

  private String number(Kind<?> kind, OptionalDouble si) {
    return si.isPresent() ? units.number(kind, si.getAsDouble()) : "-";
  }

  private void states() {
    if (result.states().stream().noneMatch(StateResult::asked)) {
      return;
    }
    heading(1, "States");
    List<List<String>> rows = new ArrayList<>();
    for (StateResult state : result.states()) {
      if (state.point().isEmpty()) {
        rows.add(List.of(state.name(), "-", "-", "-", "-", "-", "-", "-", state.severity().name()));
        continue;
      }
      Point point = state.point().get();
      rows.add(
          List.of(
              state.name(),
              number(Kind.FLOW, point.flowM3ps()),
              number(Kind.VELOCITY, point.velocityMps()),
              number(Kind.VELOCITY, point.limitMps()),
              number(Kind.VELOCITY, point.toPassMps()),
              number(Kind.PRESSURE, point.pressurePa()),
              number(Kind.POWER, point.inputW()),
              wear(point.wear()),
              state.severity().name()));
    }
    add(
        new Block.Table(
            List.of(
                "state",
                head("flow", Kind.FLOW),
                head("velocity", Kind.VELOCITY),
                "limit",
                "to pass",
                head("pressure", Kind.PRESSURE),
                head("drawn", Kind.POWER),
                "wear",
                "verdict"),
            rows));
    paragraph(
        "Velocity, limit and velocity to pass are those of the run that stands worst in that state;"
            + " a dash under limit means that there is no sand or that the flow is not turbulent, one"
            + " under drawn that the flow is given and no pump is asked. Pressure is the greatest in the line, power that of all drives, wear relative to the"
            + " design flow as flow to the power 2 to 3.5. \"Held by control\" means that the flow"
            + " is given, whatever the pump drives by itself. Each state changes one thing of the"
            + " design unless it says otherwise. "
            + result
                .governing()
                .map(g -> "The governing state is: " + g.name() + " (" + g.severity() + ").")
                .orElse(""));
    for (StateResult state : result.states()) {
      if (!state.reasons().isEmpty()) {
        add(
            new Block.Marked(
                state.severity().name(),
                List.of(state.name() + ": " + String.join("; ", state.reasons()) + ".")));
      }
    }
  }

  private void dutyBand() {
    if (result.dutyBand().isEmpty()) {
      return;
    }
    heading(1, "Duty by every correction for sand and liquid");
    DutyRow least = result.leastDuty().orElseThrow();
    List<List<String>> rows = new ArrayList<>();
    for (DutyRow row : result.dutyBand()) {
      rows.add(
          List.of(
              row.solids().orElse("-"),
              row.viscousRatio() == 1 && row.viscousEfficiencyRatio() == 1
                  ? "as water"
                  : row.viscosity().map(v -> v.words()).orElse("-"),
              number(Kind.NUMBER, row.headRatio() * row.viscousRatio()),
              number(Kind.FLOW, row.flowM3ps()),
              number(Kind.VELOCITY, row.velocityMps()),
              number(Kind.VELOCITY, row.toPassMps()),
              row.severity().name(),
              (row.believed() ? "used" : "") + (row == least ? " least" : "")));
    }
    add(
        new Block.Table(
            List.of(
                "sand",
                "liquid",
                "head",
                head("flow", Kind.FLOW),
                head("velocity", Kind.VELOCITY),
                "to pass",
                "sand stands",
                ""),
            rows));
    paragraph(
        "The pumps as designed, their curve corrected by every published way that can be asked: head"
            + " is the ratio of the first pump to clear water at its best point, velocity that of the"
            + " run that stands worst."
            + (result.states().stream().anyMatch(s -> s.name().equals(ServiceResult.LEAST_STATE))
                ? " The least is one of the states above."
                : ""));
  }

  private static String wear(WearIndex wear) {
    String low = String.format(Locale.ROOT, "%.2f", wear.low());
    String high = String.format(Locale.ROOT, "%.2f", wear.high());
    return low.equals(high) ? low : low + " to " + high;
  }

  private void pumps() {
    boolean suctionThere = assessment.design().service().suction().isPresent();
    boolean several =
        result.states().stream()
            .anyMatch(s -> s.point().map(p -> p.pumps().size() > 1).orElse(false));
    if (!several && !suctionThere && result.states().stream().noneMatch(StateResult::asked)) {
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    List<List<String>> suctions = new ArrayList<>();
    for (StateResult state : result.states()) {
      if (state.point().isEmpty()) {
        continue;
      }
      for (PumpPoint pump : state.point().get().pumps()) {
        rows.add(
            List.of(
                state.name(),
                pump.name(),
                number(Kind.FLOW, pump.flowM3ps()),
                number(Kind.HEAD, pump.headM()),
                number(Kind.PERCENT, pump.efficiency()),
                number(Kind.POWER, pump.shaftW()),
                pump.region()
                    .map(r -> number(Kind.PERCENT, pump.flowM3ps() / r.bestFlowM3ps()))
                    .orElse("-"),
                pump.flowM3ps() == 0
                    ? "shut"
                    : pump.region().map(r -> r.place(pump.flowM3ps()).words()).orElse("-")));
        pump.suction().ifPresent(s -> suctions.add(suction(state, pump, s)));
      }
    }
    if (rows.isEmpty()) {
      return;
    }
    heading(1, "Each pump in each state");
    add(
        new Block.Table(
            List.of(
                "state",
                "pump",
                head("flow", Kind.FLOW),
                head("head", Kind.HEAD),
                "efficiency [%]",
                head("shaft", Kind.POWER),
                "of best [%]",
                "works"),
            rows));
    if (!suctions.isEmpty()) {
      heading(1, "Suction");
      add(
          new Block.Table(
              List.of(
                  "state",
                  "pump",
                  head("pit above", Kind.HEAD),
                  "lost",
                  "pulse",
                  "NPSH available",
                  "required",
                  head("velocity", Kind.VELOCITY),
                  "to pass",
                  "sand"),
              suctions));
      paragraph(
          "Heads in metres or feet of mixture. The NPSH required is the maker's; the greater of 1.5"
              + " times it and it plus "
              + units.show(Kind.HEAD, 1)
              + " is asked for, because of sand and gas (from memory, unverified), or more where the"
              + " inlet works hard."
              + suctionSpeeds());
    }
  }

  private String suctionSpeeds() {
    Map<String, String> speeds = new LinkedHashMap<>();
    for (StateResult state : result.states()) {
      for (PumpPoint pump : state.point().map(Point::pumps).orElse(List.of())) {
        pump.suction()
            .flatMap(SuctionPoint::inlet)
            .ifPresent(
                inlet ->
                    speeds.putIfAbsent(
                        pump.name(),
                        pump.name()
                            + " "
                            + units.show(Kind.NUMBER, inlet.specificSpeed())
                            + ", suction energy "
                            + inlet.energy().grade().words()));
      }
    }
    return speeds.isEmpty()
        ? ""
        : " Suction specific speed at the best point, metric: "
            + String.join("; ", speeds.values())
            + ".";
  }

  private List<String> suction(StateResult state, PumpPoint pump, SuctionPoint suction) {
    return List.of(
        state.name(),
        pump.name(),
        number(Kind.HEAD, suction.floodM()),
        number(Kind.HEAD, suction.lossM()),
        number(Kind.HEAD, suction.accelerationM()),
        number(Kind.HEAD, suction.availableM()),
        number(Kind.HEAD, suction.requiredM()),
        number(Kind.VELOCITY, suction.velocityMps()),
        number(Kind.VELOCITY, suction.toPassMps()),
        suction.severity().name());
  }

  private void pulsation(PulsationResult pulsation) {
    heading(1, "Pulsation of the piston pump");
    pulsation
        .vessel()
        .ifPresent(
            vessel ->
                paragraph(
                    "The air vessel lets "
                        + units.show(Kind.PERCENT, pulsation.passed())
                        + " of the swing into the line"
                        + (vessel.damps() ? "" : ", or more: it does not damp")
                        + "."));
    if (!pulsation.runs().isEmpty()) {
      List<List<String>> rows = new ArrayList<>();
      for (Pulse pulse : pulsation.runs()) {
        rows.add(
            List.of(
                pulse.run(),
                number(Kind.VELOCITY, pulse.leastMps()),
                number(Kind.VELOCITY, pulse.greatestMps()),
                number(Kind.VELOCITY, pulse.limitMps()),
                number(Kind.TIME, pulse.longestS()),
                number(Kind.TIME, pulse.settlingS())));
      }
      add(
          new Block.Table(
              List.of(
                  "run",
                  head("least", Kind.VELOCITY),
                  "greatest",
                  "limit",
                  head("longest below it", Kind.TIME),
                  "to settle"),
              rows));
    }
    paragraph(
        "The flow in the line runs from "
            + units.show(Kind.NUMBER, pulsation.ripple().leastRatio())
            + " to "
            + units.show(Kind.NUMBER, pulsation.ripple().greatestRatio())
            + " of its mean within a stroke; the pressure peaks at "
            + units.show(Kind.PRESSURE, pulsation.peakPa())
            + ", "
            + units.show(Kind.HEAD, pulsation.accelerationM())
            + " of mixture for the pulse."
            + pulsation
                .relief()
                .map(
                    r ->
                        " The relief belongs between "
                            + units.show(Kind.PRESSURE, r.leastPa())
                            + " and "
                            + units.show(Kind.PRESSURE, r.greatestPa())
                            + "; codes come first. A surge is faster than a relief.")
                .orElse(" No setting of a relief was found to stand clear of both ends."));
  }

  private void surges() {
    if (result.surges().isEmpty()) {
      return;
    }
    heading(1, "Surge of a stop");
    List<List<String>> rows = new ArrayList<>();
    for (SurgeResult surge : result.surges()) {
      rows.add(
          List.of(
              surge.run(),
              number(Kind.VELOCITY, surge.velocityMps()),
              number(Kind.VELOCITY, surge.waveMps()),
              number(Kind.PRESSURE, surge.surgePa()),
              surge.slow().map(slow -> number(Kind.PRESSURE, slow.surgePa())).orElse("-"),
              number(Kind.PRESSURE, surge.workingPa()),
              number(Kind.PRESSURE, surge.workingPa() + surge.judgedPa()),
              number(Kind.PRESSURE, surge.ratingPa()),
              number(Kind.PRESSURE, surge.lowest().lowestPa())
                  + (surge.lowest().parts() ? " parts" : "")));
    }
    add(
        new Block.Table(
            List.of(
                "run",
                head("velocity", Kind.VELOCITY),
                head("wave speed", Kind.VELOCITY),
                head("surge", Kind.PRESSURE),
                "in the time given",
                "working",
                "together",
                "rating",
                "low half"),
            rows));
    paragraph(
        "Joukowsky's formula for a flow that stops within the run of the wave to and fro, in liquid"
            + " without gas, with the short-term modulus of the pipe. It bounds the rise from a"
            + " valve that shuts or a plug that forms; columns that part and come together, and"
            + " pockets of air, can exceed it. A stop in a given time is taken as even (Michaud's"
            + " rule). The low half of the wave is worked out at both ends of a run; \"parts\" says"
            + " that it would go below the vapour pressure, where the columns part. It is no surge"
            + " analysis.");
  }

  private void stop(StopResult stop) {
    heading(1, "Stop and restart");
    List<List<String>> rows = new ArrayList<>();
    for (StoppedRun run : stop.runs()) {
      rows.add(
          List.of(
              run.run(),
              number(Kind.BORE, run.bedM()),
              number(Kind.PERCENT, run.bedShare()),
              number(Kind.TIME, run.settlingS()),
              degrees(run.slopeRad()),
              degrees(run.slideRad()),
              number(Kind.LENGTH, run.plugM()),
              number(Kind.VELOCITY, run.clearingMps())));
    }
    add(
        new Block.Table(
            List.of(
                "run",
                head("bed", Kind.BORE),
                "of section [%]",
                head("settles in", Kind.TIME),
                "slope [deg]",
                "slides at [deg]",
                head("plug", Kind.LENGTH),
                head("water clears at", Kind.VELOCITY)),
            rows));
    paragraph(
        "Stopped full the line holds "
            + units.show(Kind.MASS, stop.sandKg())
            + " of sand in "
            + units.show(Kind.VOLUME, stop.volumeM3())
            + ". A dash under the time means that the liquid holds the sand. To start it may take "
            + units.show(Kind.PRESSURE, stop.staticPa() + stop.restart().lowPa())
            + (stop.restart().highPa().isPresent()
                ? " to "
                    + units.show(
                        Kind.PRESSURE, stop.staticPa() + stop.restart().highPa().getAsDouble())
                : " or, if a plug wedges, more than any pump has,")
            + " with the static pressure"
            + (assessment.design().pump().isPresent()
                ? "; what drives it has "
                    + units.show(Kind.PRESSURE, stop.availablePa())
                    + " against a line at rest"
                : "")
            + ". The two ends are a balance of forces and twice its sum; no"
            + " measurements with manure were found. "
            + stop.flush()
                .map(
                    f ->
                        "A flush with water takes "
                            + units.show(Kind.FLOW, f.flowM3ps())
                            + " for "
                            + units.show(Kind.TIME, f.timeS())
                            + ", "
                            + units.show(Kind.VOLUME, f.volumeM3())
                            + ".")
                .orElse("No flow of water was found that clears it."));
    plugs(stop);
    stop.supply().ifPresent(this::supply);
  }

  private void plugs(StopResult stop) {
    if (stop.plugs().isEmpty()) {
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    for (Plug plug : stop.plugs()) {
      rows.add(
          List.of(
              plug.where(),
              number(Kind.LENGTH, plug.parts().lengthM()),
              number(Kind.PRESSURE, plug.parts().climbingWeightPa()),
              number(Kind.PRESSURE, plug.frictionPa()),
              plug.wedgedPa().isPresent()
                  ? number(Kind.PRESSURE, plug.wedgedPa().getAsDouble())
                  : "beyond any pump",
              number(Kind.LENGTH, plug.movableM())));
    }
    add(
        new Block.Table(
            List.of(
                "packed full at",
                head("length", Kind.LENGTH),
                head("weight", Kind.PRESSURE),
                "friction, seeping",
                "wedged",
                head("moved at most", Kind.LENGTH)),
            rows));
    paragraph(
        "The weight is that along climbing pipe and part of the static pressure. Seeping: liquid"
            + " drags every grain. Wedged: pushed like a cork, the face sealed by fibre, which grows"
            + " exponentially with length over bore. The last column is the longest plug that the"
            + " pressure left for it moves like a cork. Never clear a plug by more pressure, nor by"
            + " compressed air.");
  }

  private void supply(FlushFlow supply) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of(supply.solved() ? "into the clean line" : "as given", flow(supply.cleanM3ps())));
    if (supply.solved()) {
      rows.add(List.of("while the line is full of its sand", flow(supply.loadedM3ps())));
      rows.add(List.of("over the settled bed", flow(supply.bedM3ps())));
    }
    add(new Block.Table(List.of("the supply of the flush gives", "flow"), rows));
  }

  private String flow(OptionalDouble flow) {
    return flow.isPresent() ? units.show(Kind.FLOW, flow.getAsDouble()) : "nothing";
  }

  private static String degrees(double angleRad) {
    return String.format(Locale.ROOT, "%.0f", Math.toDegrees(angleRad));
  }

  private void days() {
    if (result.days().isEmpty()) {
      return;
    }
    heading(1, "A day of pumping");
    List<List<String>> rows = new ArrayList<>();
    for (Day day : result.days()) {
      rows.add(
          List.of(
              day.state(),
              number(Kind.HOURS, day.runningS()),
              number(Kind.STARTS, day.startsPs()),
              day.energyJ() > 0 ? number(Kind.ENERGY, day.energyJ()) : "-",
              number(Kind.MASS, day.sandKg()),
              number(Kind.SPECIFIC_ENERGY, day.energyPerSandJpKg()),
              wear(day.wear())));
    }
    add(
        new Block.Table(
            List.of(
                "state",
                head("running", Kind.HOURS),
                head("starts", Kind.STARTS),
                head("energy", Kind.ENERGY),
                head("sand", Kind.MASS),
                head("per sand", Kind.SPECIFIC_ENERGY),
                "wear"),
            rows));
    paragraph(
        "Each state as if it lasted all day. Starts are those at an inflow of half the flow, the"
            + " most. Wear is the rate against the design flow, flow to the power "
            + WearIndex.LOW_POWER
            + " to "
            + WearIndex.HIGH_POWER
            + " ("
            + WearIndex.SOURCE
            + ").");
  }

  private void screw(Screw screw) {
    heading(1, "Screw conveyor");
    add(
        new Block.Table(
            List.of("what", "value"),
            List.of(
                List.of(
                    screw.typed() ? "load" : "load, that of the pens",
                    units.show(Kind.FLOW, screw.loadM3ps())),
                List.of("filling of the trough", units.show(Kind.PERCENT, screw.loading().value())),
                List.of(
                    "capacity at 15 %, for abrasive material",
                    units.show(Kind.FLOW, screw.capacityM3ps())),
                List.of("power at the shaft", units.show(Kind.POWER, screw.powerW())))));
  }

  private void gravityRun(GravityRun run) {
    heading(1, "Gravity pipe");
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("greatest flow", units.show(Kind.FLOW, run.greatestM3ps())));
    run.flow()
        .ifPresent(
            flow -> {
              rows.add(
                  List.of("depth of bore", units.show(Kind.PERCENT, flow.wetted().depthShare())));
              rows.add(List.of("velocity", units.show(Kind.VELOCITY, flow.velocityMps())));
              rows.add(List.of("Reynolds number", units.show(Kind.NUMBER, run.reynolds())));
            });
    run.cleansing()
        .ifPresent(
            c -> {
              rows.add(List.of("tractive stress", units.show(Kind.STRESS, c.stressPa())));
              rows.add(List.of("stress needed", units.show(Kind.STRESS, c.neededStressPa())));
            });
    add(new Block.Table(List.of("what", "value"), rows));
  }
}
