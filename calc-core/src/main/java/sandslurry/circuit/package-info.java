/**
 * From pen to storage: what the pens produce, how units of separation are connected by streams, the
 * steady balance of the closed liquid loop, a day by schedule, and the accounts of sand, water and
 * storage.
 */
package sandslurry.circuit;
