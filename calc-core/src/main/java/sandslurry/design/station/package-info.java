/** What is given of the pump and of what the line meets in service. */
package sandslurry.design.station;
