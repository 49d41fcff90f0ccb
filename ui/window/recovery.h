/* Offers work that was not saved when the program last ended. */
#pragma once

#include "window.h"

/* Asks about each draft that was left behind, the latest first, over this window.  What is opened comes into it if
 * it holds nothing else, or into a window of its own, as a step that can be undone. */
void rw_recovery_offer (RwWindow *window);
