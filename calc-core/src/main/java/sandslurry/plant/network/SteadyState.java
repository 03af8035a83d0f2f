package sandslurry.plant.network;

/** What the search for a steady balance of a network ended with. */
public sealed interface SteadyState permits SteadyBalance, NoSteadyState {}
