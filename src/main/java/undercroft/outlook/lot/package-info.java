/** The facts of each lot at an instant: carbonation, pressure, light, age, when it is ready. A batch is its lots. */
package undercroft.outlook.lot;
