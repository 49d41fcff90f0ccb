/* What the window remembers from one start to the next, in a key file in the user's settings folder.
 * Nothing of it is the maker's work, so a file that can't be read or written is no fault. */
#pragma once

#include "table/param.h"

typedef struct
{
  int      width, height;
  gboolean maximised;
  int      form_width;    /* 0: not yet chosen */
  int      drawer_height; /* likewise */
  gboolean form_shown, drawer_shown;
  RwUnits  units;
  gboolean toured; /* the tour was offered */
} RwMemory;

RwMemory rw_memory_load (void);
void     rw_memory_save (const RwMemory *memory);
