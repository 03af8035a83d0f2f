/** Motors, starts, daily duty and conveyors. */
package sandslurry.pump.drive;
