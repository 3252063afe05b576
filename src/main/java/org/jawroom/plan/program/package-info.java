/**
 * Mixed-integer programs and the solver behind them. Its answers are only claims: callers verify
 * them in whole numbers. The only room that knows the solver's library.
 */
package org.jawroom.plan.program;
