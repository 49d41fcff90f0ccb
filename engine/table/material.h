/* Tables of woods, metals and threads.  Ids are what project files hold; sources stand beside the rows in
 * material.c. */
#pragma once

#include "text.h"

typedef struct
{
  const char *id;
  const char *label;
  double      density_kg_m3; /* air dry, about 12 % moisture */
  double      modulus_gpa;   /* along the grain, 12 % */
  double      cr, ct;        /* change per size and per % moisture, radial and tangential; 0: not known */
  const char *note;
} RwWood;

typedef struct
{
  const char *id;
  const char *label;
  double      modulus_gpa;
  double      yield_mpa;
  double      density_kg_m3;
} RwMetal;

typedef struct
{
  const char *id;
  double      major_mm;
  double      pitch_mm;
  double      stress_area_mm2;
  double      tap_drill_mm;
} RwThread;

extern const RwWood   rw_woods[];
extern const int      rw_woods_count;
extern const RwMetal  rw_metals[];
extern const int      rw_metals_count;
extern const RwThread rw_threads[];
extern const int      rw_threads_count;

/* Row of the table, or -1. */
int rw_wood_find   (const char *id);
int rw_metal_find  (const char *id);
