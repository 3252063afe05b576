/**
 * Nothing gets better for being made harder: a {@link org.jawroom.properties.harder.ShopDraft} is a
 * shop to be changed, each {@link org.jawroom.properties.harder.Hardening} a change.
 */
package org.jawroom.properties.harder;
