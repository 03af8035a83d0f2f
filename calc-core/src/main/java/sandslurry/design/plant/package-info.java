/** What is given of the plant: pens, units, storage, prices, targets. */
package sandslurry.design.plant;
