/** What sand and viscosity take from a pump. */
package sandslurry.pump.derating;
