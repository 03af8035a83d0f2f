package sandslurry.plant.network;

import java.util.List;
import java.util.Map;
import sandslurry.plant.Stream;

/**
 * What passes through a network in a step of time.
 *
 * @param streams every stream by name, feeds first
 * @param feeds what arrives at each unit, its inlets mixed, by name of the unit
 * @param contents what each pit holds at the end; flows are to be read as masses [kg]
 * @param running share of the step that each pump of a pit runs, by its stream; pumps that are set
 *     to nothing are left out
 * @param duties share of the time in which a unit that is no pit sees its flow, by name
 * @param notes what the units say of their feeds, each once
 * @param arriving what arrives at each unit by constituent, to start the next step from
 */
public record Passage(
    Map<String, Stream> streams,
    Map<String, Stream> feeds,
    Map<String, Stream> contents,
    Map<String, Double> running,
    Map<String, Double> duties,
    List<UnitNote> notes,
    double[] arriving) {}
