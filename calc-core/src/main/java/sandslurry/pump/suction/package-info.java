/** Net positive suction head: available, required, margin. */
package sandslurry.pump.suction;
