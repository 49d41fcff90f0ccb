/* The rows of params.def as constants, and what can be told from a row alone. */
#include "param.h"

#include <stddef.h>
#include <string.h>

/* Labels stand in arrays below, which takes plain literals. */
#undef N_
#define N_(String) String

/* A row does not say its group; the line of params.def that a group begins in stands for it.
 *
 *   GROUP (label)             becomes  group_at_17 = 17 * ROOM,
 *   PARAM (int, build_handed) becomes  in_build_handed,           one more than the one before
 */
#define ROOM 1000
#define AT_LINE(line) group_at_##line
#define GROUP_AT(line) AT_LINE (line)
enum
{
#define GROUP(label) GROUP_AT (__LINE__) = __LINE__ * ROOM,
#define PARAM(type, field, ...) in_##field,
#include "params.def"
#undef PARAM
#undef GROUP
};

/*   GROUP (label)  becomes  [17] = label,   */
static const char group_labels[512][32] = {
#define GROUP(label) [__LINE__] = label,
#define PARAM(...)
#include "params.def"
#undef PARAM
#undef GROUP
};

/*   PARAM (int, build_handed, "build.handed", CHOICE, ...)  becomes
 *   [RW_P_build_handed] = { "build.handed", group_labels[17], ..., RW_KIND_CHOICE, offsetof (...) },   */
static const RwParam table[RW_PARAM_COUNT] = {
#define GROUP(label)
#define PARAM(type, field, id, kind, unit, initial, min, max, step, options, label, meaning) \
  [RW_P_##field] = { id, group_labels[in_##field / ROOM], label, meaning, unit, initial, options, \
                     min, max, step, RW_KIND_##kind, offsetof (RwDesign, field) },
#include "params.def"
#undef PARAM
#undef GROUP
};

const RwParam *
rw_param (RwParamId id)
{
  g_return_val_if_fail ((int) id >= 0 && id < RW_PARAM_COUNT, NULL);
  return &table[id];
}

int
rw_param_find (const char *id)
{
  for (int i = 0; i < RW_PARAM_COUNT; i++)
    if (strcmp (table[i].id, id) == 0)
      return i;
  return -1;
}

gboolean
rw_param_is_number (const RwParam *param)
{
  return param->kind < RW_KIND_CHOICE;
}

gboolean
rw_param_is_limit (const RwParam *param)
{
  return g_str_has_prefix (param->id, "limits.") || g_str_has_prefix (param->id, "tolerance.")
         || g_str_has_prefix (param->id, "scatter.");
}

const char *
rw_param_kind_name (const RwParam *param)
{
  static const char *const names[] = {
    [RW_KIND_LENGTH] = "length",
    [RW_KIND_ANGLE] = "angle",
    [RW_KIND_RATIO] = "ratio",
    [RW_KIND_COUNT] = "count",
    [RW_KIND_MASS] = "mass",
    [RW_KIND_DENSITY] = "density",
    [RW_KIND_TENSION] = "tension",
    [RW_KIND_FREQUENCY] = "frequency",
    [RW_KIND_MODULUS] = "modulus",
    [RW_KIND_TEMPERATURE] = "temperature",
    [RW_KIND_SPEED] = "speed",
    [RW_KIND_VOLUME] = "volume",
    [RW_KIND_CHOICE] = "choice",
    [RW_KIND_WOOD] = "wood",
    [RW_KIND_METAL] = "metal",
    [RW_KIND_THREAD] = "thread",
    [RW_KIND_LENGTH_LIST] = "list",
    [RW_KIND_CENTS_LIST] = "list",
    [RW_KIND_WOOD_LIST] = "list",
    [RW_KIND_STRING_SET] = "list",
  };

  return names[param->kind];
}
