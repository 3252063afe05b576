/** Which machines and vises a command is about, as the user names them. */
package org.jawroom.app.choice;
