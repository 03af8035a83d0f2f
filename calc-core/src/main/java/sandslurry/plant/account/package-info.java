/** Accounts of sand, water, energy and storage. */
package sandslurry.plant.account;
