#pragma once

// Says what it answers, but too late.
