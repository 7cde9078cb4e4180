#!/usr/bin/env node
console.log('placeholder')
